import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { groundedLines } from '../../core/knowledge/lint/grounded-lines.ts';

/** Where published sources contradict each other both are shown: the line that stands, and who speaks against it. */
const DISPUTED: readonly (readonly [what: string, place: string, against: string])[] = [
  ['the direction of the heat line on the strap', 'runs-hot shows heatLine near the weld', 'S61'],
  ['whether a leaner mixture is always hotter', 'mixture-lean makes runs-hot', 'S64'],
  ['the wording "too high a heat range fouls"', 'plugs-too-cold makes dry-soot', 'W15'],
  ['whether manganese makes plugs miss', 'rust-film gives misfire under load', 'W3'],
  ['whether shiny beads are piston metal', 'knock-broken shows specks shiny beads', 'S59'],
  ['how much richer altitude makes a fixed jet', 'altitude-rich makes dry-soot', 'S09'],
  ['whether an aircraft plug has a resistance limit', 'resistor-burnt makes resistor-failed', 'S54'],
  ['which side of the gap wears', 'strap-hollowed shows centreElectrode sharp', 'S65'],
  ['how much compressions may differ', 'compression-test', 'W4'],
  ['whether a leak-down figure alone condemns a cylinder', 'leak-down-test', 'S53'],
  ['the resistance of a lead', 'ignition-measure', 'S21'],
  ['how much compressions of a low-compression engine may differ', 'compression-test', 'S19'],
  ['how far below the mean an aircraft cylinder may lie', 'compression-test', 'S22'],
  ['how much leak-down is too much on a car', 'leak-down-test', 'W20'],
  ['how much leak-down a study guide allows, from one version to the next', 'leak-down-test', 'S58'],
  ['whether plug threads are fitted dry', 'seat-and-torque-look', 'W15'],
  ['whether plug threads are fitted dry in salt water', 'seat-and-torque-look', 'W11'],
  ['whether plug threads are fitted dry in aircraft', 'seat-and-torque-look', 'S53'],
  ['whether lean or rich cruising leads up the plugs', 'leaded-cool-running moved by lean running in cruise', 'S07'],
  ['whether a hotter plug may follow persistent oil', 'oil-on-the-tip', 'S16'],
  ['what colour liquefied gas leaves', 'gas-brown shows noseColour brown', 'common practice'],
  ['whether a stain above the crimp is harmless', 'corona-stained shows body corona stain', 'common practice'],
];

describe('sources that differ', () => {
  const lines = groundedLines(KNOWLEDGE);

  it.each(DISPUTED)('both stand on %s', (_what, place, against) => {
    expect(lines.find((line) => line.place === place)?.against).toContain(against);
  });

  it('say in words what they hold against the line', () => {
    const { causes, conditions, checks, stopRules } = KNOWLEDGE;
    const links = [...causes.flatMap((c) => [...c.makes, ...c.gives]), ...conditions.flatMap((c) => [...c.shows, ...c.gives])];
    const said = [...links, ...checks, ...stopRules].flatMap(({ against }) => (against === undefined ? [] : [against].flat().map(({ says }) => says)));
    expect(said.length).toBeGreaterThanOrEqual(DISPUTED.length);
    expect(said.filter((words) => words.length < 20)).toEqual([]);
  });
});
