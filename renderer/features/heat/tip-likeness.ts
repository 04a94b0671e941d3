import { PRE_IGNITION, SELF_CLEANING, TOO_HOT } from '../../../core/thermal/limits.ts';
import type { Tip } from '../../../shared/formats/reading-sheet.v1.ts';

export type Place = 'cold' | 'window' | 'hot' | 'alarm';

/** Where a tip of so many °C stands. */
export function placeOf(tip: number): Place {
  if (tip < SELF_CLEANING.middle) return 'cold';
  if (tip > PRE_IGNITION.middle) return 'alarm';
  return tip > TOO_HOT.middle ? 'hot' : 'window';
}

/** A tip as it might look after long running at this temperature and mixture; an illustration, nothing more. */
export function looksLike(place: Place, lambda: number): Tip {
  switch (place) {
    case 'cold': return lambda < 0.95
      ? { noseColour: 'black', noseSurface: 'matt soot', deposit: 'dry soot', coverage: 'full', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'heavy soot' }
      : { noseColour: 'dark grey', noseSurface: 'fine powder', deposit: 'light dusting', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'even soot' };
    case 'window': return { noseColour: 'light tan', noseSurface: 'bare', deposit: 'none', centreElectrode: 'sharp', groundElectrode: 'as new', shellRim: 'light grey' };
    case 'hot': return { noseColour: 'white', noseSurface: 'bare', deposit: 'none', centreElectrode: 'blued', groundElectrode: 'blued', shellRim: 'bare metal' };
    case 'alarm': return { noseColour: 'white', noseSurface: 'blistered', deposit: 'none', centreElectrode: 'blistered', groundElectrode: 'blued', shellRim: 'blued' };
  }
}
