import type { PlugPlace } from '../../../../core/domain/plugs.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { LayingOut } from './use-laying.ts';
import { placeBeside, placeOfCylinder } from './steps.ts';

/** Digits that follow each other within this time make one number: cylinder 12. Milliseconds. */
const ONE_NUMBER = 700;

/** Puts digits together to the number of a cylinder, as long as the engine may have such a one. */
export function cylinderKeys(): (digit: string, most: number, now: number) => number {
  let [typed, last] = ['', -Infinity];
  return (digit, most, now) => {
    const longer = now - last < ONE_NUMBER ? typed + digit : digit;
    typed = Number(longer) <= most ? longer : digit;
    last = now;
    return Number(typed);
  };
}

/** Does what a key on a photo asks for; false when it asks for nothing. */
export function onPhotoKey(key: string, photo: PhotoRecord, places: readonly PlugPlace[], laying: LayingOut, cylinder: (digit: string) => number): boolean {
  const lay = (place: PlugPlace | null | undefined): void => { if (place !== undefined) laying.lay(photo, place); };
  if (/^\d$/.test(key)) lay(placeOfCylinder(cylinder(key), photo, places));
  else if (key === '[') lay(placeBeside(photo, places, -1));
  else if (key === ']') lay(placeBeside(photo, places, 1));
  else if (key.toLowerCase() === 'v') laying.turn(photo);
  else if (key === 'Backspace') lay(photo.place === null ? undefined : null);
  else if (key === 'Delete') laying.remove(photo);
  else return false;
  return true;
}
