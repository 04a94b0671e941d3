import brannoch1 from './brannoch-f4/2025-10-12.json' with { type: 'json' };
import brannoch2 from './brannoch-f4/2026-03-08.json' with { type: 'json' };
import halvorn1 from './halvorn-s6/2025-08-30.json' with { type: 'json' };
import halvorn2 from './halvorn-s6/2025-11-08.json' with { type: 'json' };
import halvorn3 from './halvorn-s6/2025-12-06.json' with { type: 'json' };
import marlisse1 from './marlisse-1300/2025-09-06.json' with { type: 'json' };
import marlisse2 from './marlisse-1300/2026-02-14.json' with { type: 'json' };
import marlisse3 from './marlisse-1300/2026-04-18.json' with { type: 'json' };
import tarnelle1 from './tarnelle-350/2025-06-21.json' with { type: 'json' };
import tarnelle2 from './tarnelle-350/2025-08-02.json' with { type: 'json' };
import tarnelle3 from './tarnelle-350/2025-08-23.json' with { type: 'json' };
import tarnelle4 from './tarnelle-350/2025-09-13.json' with { type: 'json' };
import { inTime } from './in-time.ts';

/** What the club put right before the reading of a day. */
const WORK = {
  marlisse: [{ date: '2026-04-18', done: [{ cause: 'guides-worn', cylinders: [3] }] }],
  brannoch: [{ date: '2026-03-08', done: [{ cause: 'leaded-cool-running' }] }],
  tarnelle: [
    { date: '2025-08-02', done: [{ cause: 'crank-seal-leaking', cylinders: [1] }] },
    { date: '2025-08-23', done: [{ cause: 'premix-oily' }] },
    { date: '2025-09-13', done: [{ cause: 'crank-seal-leaking', cylinders: [2] }], tried: [{ cause: 'premix-oily' }] },
  ],
  halvorn: [{ date: '2025-12-06', done: [{ cause: 'boost-high' }] }],
};

/**
 * The demo library: four engines of the Ottersley Bench Club, which does not exist, nor do its engines, plug makers and heat scales. On the Ostrin scale
 * figures grow toward hotter, on the Kelvane scale toward colder. Sheets stand in order of date, each beside the one before it; they are unparsed, as a
 * file would be. `photos`: the folder here whose `photos` were drawn after the sheets.
 */
export const SEEDS: readonly { readonly name: string; readonly photos?: string; readonly sheets: readonly unknown[] }[] = [
  { name: 'Marlisse 1300 saloon', photos: 'marlisse-1300', sheets: inTime([marlisse1, marlisse2, marlisse3], WORK.marlisse) },
  { name: 'Brannoch F4 in the club two-seater', sheets: inTime([brannoch1, brannoch2], WORK.brannoch) },
  { name: 'Tarnelle 350 two-stroke twin', photos: 'tarnelle-350', sheets: inTime([tarnelle1, tarnelle2, tarnelle3, tarnelle4], WORK.tarnelle) },
  { name: 'Halvorn S6 blown straight six', sheets: inTime([halvorn1, halvorn2, halvorn3], WORK.halvorn) },
];
