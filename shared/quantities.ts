import { z } from 'zod';

/** Units live in the type: a number becomes a quantity only by parsing or by a named conversion in `core/units.ts`. */
export const celsius = z.number().min(-273.15).brand<'°C'>();
export const fahrenheit = z.number().min(-459.67).brand<'°F'>();
export const kelvin = z.number().nonnegative().brand<'K'>();
export const kilopascal = z.number().nonnegative().brand<'kPa'>();
export const psi = z.number().nonnegative().brand<'psi'>();
export const millimetre = z.number().nonnegative().brand<'mm'>();
export const inch = z.number().nonnegative().brand<'in'>();
export const newtonMetre = z.number().nonnegative().brand<'N·m'>();
export const poundFoot = z.number().nonnegative().brand<'lb-ft'>();
export const kilometre = z.number().nonnegative().brand<'km'>();
export const mile = z.number().nonnegative().brand<'mi'>();

export type Celsius = z.infer<typeof celsius>;
export type Fahrenheit = z.infer<typeof fahrenheit>;
export type Kelvin = z.infer<typeof kelvin>;
export type Kilopascal = z.infer<typeof kilopascal>;
export type Psi = z.infer<typeof psi>;
export type Millimetre = z.infer<typeof millimetre>;
export type Inch = z.infer<typeof inch>;
export type NewtonMetre = z.infer<typeof newtonMetre>;
export type PoundFoot = z.infer<typeof poundFoot>;
export type Kilometre = z.infer<typeof kilometre>;
export type Mile = z.infer<typeof mile>;
/** Only computed, never read from outside: a type without a parser. */
export type Kilovolt = number & z.$brand<'kV'>;
export type Megohm = number & z.$brand<'MΩ'>;
export type Kilonewton = number & z.$brand<'kN'>;
export type Metre = number & z.$brand<'m'>;
