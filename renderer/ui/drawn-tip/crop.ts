import { WHOLE, type View, type Window } from './drawing.ts';
import type { Question } from './parts.ts';

const NOSE: Window = [-57, -57, 114, 114];
const close = (view: View, window: Window): { readonly view: View; readonly window: Window } => ({ view, window });

/** Which part of which view shows a facet best: square windows for small samples. */
export const CLOSE_UP: Readonly<Record<Question, { readonly view: View; readonly window: Window }>> = {
  overall: close('end', WHOLE.end),
  noseColour: close('end', NOSE),
  noseSurface: close('end', NOSE),
  deposit: close('end', NOSE),
  coverage: close('end', NOSE),
  specks: close('end', NOSE),
  noseDamage: close('end', NOSE),
  sootRing: close('end', [-64, -64, 128, 128]),
  shellRim: close('end', [-86, -86, 92, 92]),
  centreElectrode: close('end', [-24, -24, 48, 48]),
  groundElectrode: close('end', [-43, -86, 86, 86]),
  heatLine: close('side', [8, 22, 96, 96]),
  contact: close('side', [-4, 24, 104, 104]),
  bridge: close('side', [12, 52, 148, 148]),
  threads: close('side', [84, 22, 104, 104]),
  seat: close('side', [174, 4, 96, 96]),
  insulator: close('side', [252, 30, 140, 140]),
  body: close('side', [262, 36, 128, 128]),
  terminal: close('side', [362, 60, 80, 80]),
};
