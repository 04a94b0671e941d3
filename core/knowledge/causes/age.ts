import { COMMON_PRACTICE, type Cause } from '../types.ts';

/** Plugs that have done their time. */
export const ageCauses: readonly Cause[] = [
  {
    id: 'plugs-old',
    name: 'Plugs worn out, past their service life',
    synonyms: [
      'worn out plugs', 'normal wear', 'plugs beyond their service life', 'high mileage plugs', 'old plugs', 'plugs in service too long',
      'extended service', 'spark erosion', 'service interval overrun', 'electrodes worn by long service', 'plugs overdue for renewal',
      'plugs worn', 'plugs due for renewal', 'electrode erosion',
    ],
    scope: 'engine',
    kind: 'age',
    prior: 'common',
    makes: [
      { condition: 'worn', strength: 'usually', because: 'Every spark takes metal along.', source: ['S03', 'S17'] },
      { condition: 'resistor-failed', strength: 'hardly ever', because: 'Old resistors drift.', source: 'S54' },
      { condition: 'flashover', strength: 'hardly ever', because: 'The grown gap sends the spark down the outside.', source: ['W17', 'S03'] },
    ],
    shows: [],
    gives: [
      { symptom: 'misfire under load', strength: 'sometimes', because: 'A worn plug asks for twice the voltage.', source: 'W6' },
      { symptom: 'hard start cold', strength: 'sometimes', because: 'Damp and cold find out worn plugs.', source: 'W6' },
      { symptom: 'high fuel use', strength: 'sometimes', because: 'Missed firings waste fuel.', source: 'W6' },
    ],
    moved: [
      { by: { served: 'long' }, how: 'much likelier', because: 'They have run far.', source: 'W1' },
      { by: { served: 'new' }, how: 'ruled out', because: 'They are new.', source: COMMON_PRACTICE },
      { by: { tag: 'plugs new' }, how: 'ruled out', because: 'They are new.', source: COMMON_PRACTICE },
      { by: { tag: 'gap found too wide' }, how: 'likelier', because: 'The gap was found grown.', source: 'W1' },
    ],
    cure: 'Renew the set.',
    checks: ['gap-measure', 'service-record'],
  },
  {
    id: 'plug-old-here',
    name: 'An older plug in this hole',
    synonyms: [
      'one old plug among newer ones', 'mixed ages', 'plug missed at the last change', 'one worn plug among new ones', 'one plug not renewed',
    ],
    scope: 'plug',
    kind: 'age',
    part: 'plug',
    prior: 'rare',
    needs: { cylinders: 'several' },
    makes: [{ condition: 'worn', strength: 'usually', because: 'One worn plug among newer ones was not renewed with them.', source: 'S17' }],
    shows: [],
    gives: [],
    moved: [{ by: { tag: 'plugs new' }, how: 'likelier', because: 'Others are new.', source: COMMON_PRACTICE }],
    cure: 'Renew plugs as a set.',
    checks: ['gap-measure', 'service-record'],
  },
  {
    id: 'severe-service',
    name: 'Wear by severe service',
    synonyms: [
      'severe service', 'hard use', 'fast wear', 'oxidation of the electrodes', 'lead attack on the electrodes', 'rapid electrode wear',
      'sustained high load', 'erosion by lead', 'accelerated gap growth',
    ],
    scope: 'engine',
    kind: 'age',
    prior: 'rare',
    makes: [
      {
        condition: 'worn',
        strength: 'usually',
        because: 'Heat oxidises every electrode metal, and lead eats platinum along its grains.',
        source: ['S41', 'S42', 'S40'],
      },
    ],
    shows: [],
    gives: [],
    moved: [
      { by: { duty: ['full load'] }, how: 'likelier', because: 'It is used hard.', source: 'S50' },
      { by: { use: ['competition', 'stationary', 'aircraft'] }, how: 'likelier', because: 'Many hours at load.', source: ['S50', 'S39'] },
      { by: { aspiration: 'boosted' }, how: 'likelier', because: 'Hot electrodes wear faster.', source: 'S30' },
    ],
    cure: 'Shorten the interval or use a more durable electrode the engine maker lists.',
    checks: ['gap-measure', 'service-record'],
  },
];
