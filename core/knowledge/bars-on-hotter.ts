import { COMMON_PRACTICE, FROM_MEMORY, type Bar } from './types.ts';

/** Signs that forbid any step toward hotter, whatever else is believed. Read straight off the sheet; a doubted value counts. */
export const BARS_ON_HOTTER: readonly Bar[] = [
  {
    id: 'oil-on-the-tip',
    sign: 'oil',
    anyOf: [
      { plug: 'deposit', is: ['wet oil', 'hard carbon'] },
      { plug: 'shellRim', is: ['wet oil'] },
    ],
    because: 'A hotter plug burns the oil off the nose and hides what lets it in.',
    source: ['S16', 'S17'],
    against: { source: 'S16', says: 'one manual allows a hotter plug if oil persists after repair' },
  },
  {
    id: 'ash-on-the-tip',
    sign: 'oil ash',
    anyOf: [
      { plug: 'deposit', is: ['ash crust'] },
      { plug: 'shellRim', is: ['ash'] },
    ],
    because: 'Ash glows; a hotter plug brings it nearer to lighting the charge.',
    source: FROM_MEMORY,
  },
  {
    id: 'oil-felt',
    sign: 'oil',
    anyOf: [{ symptom: 'blue smoke' }, { symptom: 'oil use' }, { cylinder: 'borescope', is: ['wet with oil'] }],
    because: 'Oil in the chamber is cured at the rings or guides, not at the plug.',
    source: ['S16', 'S17'],
  },
  {
    id: 'oil-known',
    sign: 'oil',
    anyOf: [
      { circumstance: { tag: 'breather blocked' } },
      { circumstance: { tag: 'oil overfilled' } },
      { circumstance: { tag: 'valve guides worn' } },
      { circumstance: { tag: 'new rings running in' } },
    ],
    because: 'The oil’s way into the chamber is known and comes first.',
    source: ['S16', 'W13'],
  },
  {
    id: 'specks',
    sign: 'detonation',
    anyOf: [
      { plug: 'specks', is: ['dark pepper', 'grey metallic', 'shiny beads'] },
      { plug: 'deposit', is: ['metal spray'] },
    ],
    because: 'Pepper and metal on the nose are what knock leaves behind.',
    source: ['W10', 'S59'],
  },
  {
    id: 'broken-nose',
    sign: 'a broken insulator',
    anyOf: [
      { plug: 'noseDamage', is: ['hairline crack', 'cracked', 'chipped', 'broken away'] },
      { plug: 'insulator', is: ['loose in shell', 'cracked above the shell'] },
    ],
    because: 'A cracked nose becomes a hot spot; a hotter plug makes it one sooner.',
    source: ['S66', 'W10'],
  },
  {
    id: 'knock-felt',
    sign: 'detonation',
    anyOf: [{ symptom: 'knock under load' }],
    because: 'Knock is the engine’s own warning; a hotter tip can turn it into pre-ignition.',
    source: ['S68', 'W10'],
  },
  {
    id: 'knock-known',
    sign: 'conditions for detonation',
    anyOf: [
      { circumstance: { tag: 'timing advanced from specification' } },
      { circumstance: { tag: 'low-octane fuel' } },
      { circumstance: { tag: 'boost raised' } },
    ],
    because: 'What brings knock is put right before the plug is thought of.',
    source: 'S68',
  },
  {
    id: 'overheated-tip',
    sign: 'heat',
    anyOf: [
      { plug: 'noseSurface', is: ['blistered'] },
      { plug: 'centreElectrode', is: ['blued', 'blistered', 'melted', 'missing'] },
      { plug: 'groundElectrode', is: ['blued', 'melted'] },
      { plug: 'shellRim', is: ['blued'] },
    ],
    because: 'Blisters, blue and molten metal say that the plug is hot already.',
    source: ['S14', 'S16', 'W6'],
  },
  {
    id: 'run-on',
    sign: 'pre-ignition',
    anyOf: [{ symptom: 'run-on after switch-off' }],
    because: 'Something in the chamber glows on without a spark.',
    source: ['S10', 'S66'],
  },
  {
    id: 'engine-hot',
    sign: 'overheating',
    anyOf: [{ symptom: 'overheating' }, { circumstance: { tag: 'cooling fault found' } }, { circumstance: { coolant: 'hot' } }],
    because: 'Cooling comes before the plug.',
    source: ['S16', 'W6'],
  },
  {
    id: 'struck',
    sign: 'mechanical damage',
    anyOf: [
      { plug: 'contact', is: ['closed by piston', 'debris marks'] },
      { plug: 'groundElectrode', is: ['bent', 'broken off'] },
      { plug: 'threads', is: ['damaged'] },
    ],
    because: 'Something hit the plug or its thread is spoilt; the heat value has no part in it.',
    source: ['S05', 'S10'],
  },
  {
    id: 'engine-damaged',
    sign: 'mechanical damage',
    anyOf: [
      { cylinder: 'borescope', is: ['piston damage', 'valve damage'] },
      { cylinder: 'compression', is: ['low'] },
      { cylinder: 'leakDown', is: ['fault'] },
    ],
    because: 'A worn or broken cylinder fouls any plug.',
    source: ['S14', 'S15'],
  },
  {
    id: 'poor-heat-path',
    sign: 'a poor seat',
    anyOf: [
      { plug: 'seat', is: ['leakage marks', 'loose when removed', 'loose with leakage marks', 'gasket missing', 'gasket doubled'] },
      { plug: 'removalTorque', is: ['loose'] },
    ],
    because: 'A plug that sits badly cannot be judged for its heat value.',
    source: ['S16', 'S53'],
  },
  {
    id: 'coolant',
    sign: 'coolant',
    anyOf: [
      { plug: 'deposit', is: ['water'] },
      { symptom: 'coolant loss' },
      { symptom: 'white smoke' },
      { cylinder: 'borescope', is: ['wet with water', 'washed clean'] },
    ],
    because: 'Coolant in the chamber is cured at the gasket or casting.',
    source: ['S58', 'W12'],
  },
  {
    id: 'aircraft',
    sign: 'an aircraft engine',
    anyOf: [{ circumstance: { use: ['aircraft'] } }],
    because: 'Only plugs of the approved list may be fitted, by or under a licensed person.',
    source: 'S10',
  },
  {
    id: 'not-the-specified-plug',
    sign: 'a plug already hotter than specified',
    anyOf: [{ circumstance: { fitted: 'hotter' } }],
    because: 'The step has been taken already; one more is not a trial.',
    source: COMMON_PRACTICE,
  },
];
