import { useText } from '../text/index.ts';
import type { Station } from './route.ts';

export function StationScreen({ station }: { station: Station }) {
  return <h1>{useText().shell.stations[station]}</h1>;
}
