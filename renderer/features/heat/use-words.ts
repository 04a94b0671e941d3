import type { Band, Input, Note } from '../../../core/band.ts';
import type { Setting } from '../../../core/heat/setting.ts';
import type { DriveProblem } from '../../../core/thermal/drive.ts';
import { useStore } from '../../state/store.ts';
import { useText } from '../../text/index.ts';
import { formatNumber } from '../../text/numbers.ts';
import { toShown, unitOf, type Quantity } from '../../ui/quantity.ts';
import { useQuantity } from '../../ui/use-quantity.ts';

const QUANTITY: Readonly<Partial<Record<Input, Quantity>>> = {
  speed: 'speed', 'manifold pressure': 'pressure', 'exhaust pressure': 'pressure', 'intake temperature': 'temperature', advance: 'angle',
  'coolant temperature': 'temperature', gap: 'length',
};

export type HeatWords = {
  readonly celsius: (value: number) => string;
  /** A band of °C: middle, low and high. */
  readonly tips: (band: Pick<Band<number>, 'low' | 'middle' | 'high'>) => string;
  readonly kilovolts: (band: Pick<Band<number>, 'low' | 'middle' | 'high'>) => string;
  readonly note: (note: Note) => string;
  readonly driveProblem: (problem: DriveProblem) => string;
  readonly running: (setting: Setting) => string;
  readonly percent: (share: number) => string;
  /** A difference of temperature, K. */
  readonly degrees: (kelvin: number) => string;
};

/** Numbers of the models in the page's words and the units the person set. */
export function useHeatWords(): HeatWords {
  const { heat } = useText();
  const quantity = useQuantity();
  const celsius = (value: number): string => quantity('temperature', value);
  const percent = (share: number): string => `${formatNumber(100 * share, 0)} %`;
  const units = useStore((state) => state.settings.units);
  const degrees = (kelvin: number): string => {
    const unit = unitOf('temperature', units);
    return `${formatNumber(toShown(kelvin, { ...unit, zeroAt: 0 }), 0)} ${unit.name}`;
  };
  const bare = (of: Quantity, value: number): string => formatNumber(toShown(value, unitOf(of, units)), unitOf(of, units).decimals);
  const banded = (of: Quantity): HeatWords['tips'] => ({ low, middle, high }) => heat.band(quantity(of, middle), bare(of, low), bare(of, high));
  const note = (one: Note): string => {
    const of = QUANTITY[one.of];
    const shown = (value: number): string => (of === undefined ? formatNumber(value) : quantity(of, value));
    return heat.note(one, shown(one.value), ...(one.kind === 'outside' ? [shown(one.least), shown(one.most)] as const : ['', ''] as const));
  };
  const driveProblem = (problem: DriveProblem): string => {
    switch (problem.kind) {
      case 'outside': return note(problem);
      case 'not whole seconds': return heat.drive.problems.phase(problem.phase, problem.seconds);
      case 'drive too long': return heat.drive.problems.tooLong(problem.seconds, problem.most);
      case 'start too cold': return heat.drive.problems.cold(celsius(problem.celsius), celsius(problem.least));
    }
  };
  return {
    celsius, percent, degrees, note, driveProblem, tips: banded('temperature'), kilovolts: banded('voltage'),
    running: ({ rpm, load, lambda, advance }) => heat.running(quantity('speed', rpm), percent(load), formatNumber(lambda), quantity('angle', advance)),
  };
}
