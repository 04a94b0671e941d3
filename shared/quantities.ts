import { z } from 'zod';

/** Units live in the type: a number becomes a quantity only by parsing or by a named conversion in `core/units.ts`. */
export const celsius = z.number().min(-273.15).brand<'°C'>();
export const kelvin = z.number().nonnegative().brand<'K'>();
export const kilopascal = z.number().nonnegative().brand<'kPa'>();
export const millimetre = z.number().nonnegative().brand<'mm'>();
export const newtonMetre = z.number().nonnegative().brand<'N·m'>();

export type Celsius = z.infer<typeof celsius>;
export type Kelvin = z.infer<typeof kelvin>;
export type Kilopascal = z.infer<typeof kilopascal>;
export type Millimetre = z.infer<typeof millimetre>;
export type NewtonMetre = z.infer<typeof newtonMetre>;
