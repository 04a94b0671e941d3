import { COMMON_PRACTICE, type Cause } from '../types.ts';

/** How the engine is used. */
export const useCauses: readonly Cause[] = [
  {
    id: 'long-idling',
    name: 'Long idling',
    synonyms: [
      'excessive idling', 'prolonged idling', 'too much idling', 'idling for long periods', 'extended ground running', 'long ground idling',
      'left idling', 'extended idle',
    ],
    scope: 'engine',
    kind: 'use',
    prior: 'common',
    makes: [
      { condition: 'dry-soot', strength: 'usually', because: 'At idle the chamber is too cool and calm to carry soot away.', source: ['S14', 'S16', 'S01'] },
      { condition: 'runs-cold', strength: 'often', because: 'The nose never reaches its self-cleaning temperature.', source: 'S17' },
      { condition: 'oil-wet', strength: 'hardly ever', because: 'Idling draws oil in.', source: 'S01' },
    ],
    shows: [],
    gives: [{ symptom: 'rough idle', strength: 'sometimes', because: 'Sooted plugs miss at idle.', source: 'S14' }],
    moved: [
      { by: { duty: ['idle'] }, how: 'much likelier', because: 'It was left idling.', source: 'S14' },
      { by: { tag: 'long idling' }, how: 'much likelier', because: 'It idled long.', source: 'S14' },
      { by: { stop: ['clean cut'] }, how: 'less likely', because: 'It was stopped from load.', source: COMMON_PRACTICE },
      { by: { duty: ['full load', 'steady cruise'] }, how: 'much less likely', because: 'It ran under load.', source: 'S01' },
    ],
    cure: 'Give it a spell of load; idle less, and faster.',
    checks: ['duty-interview'],
  },
  {
    id: 'short-trips',
    name: 'Short trips',
    synonyms: [
      'stop-and-go driving', 'short-distance driving', 'frequent cold starts', 'never warmed up', 'stop-start use', 'short journeys',
      'engine never hot', 'cold running on short journeys', 'repeated cold starts',
    ],
    scope: 'engine',
    kind: 'use',
    prior: 'common',
    makes: [
      {
        condition: 'dry-soot',
        strength: 'usually',
        because: 'The engine is rich and cool and never gets warm enough to burn the soot off.',
        source: ['S14', 'S16'],
      },
      { condition: 'runs-cold', strength: 'often', because: 'The nose never reaches its self-cleaning temperature.', source: 'S17' },
      { condition: 'fuel-wet', strength: 'rarely', because: 'Cold starts wet the plugs.', source: COMMON_PRACTICE },
    ],
    shows: [],
    gives: [{ symptom: 'hard start cold', strength: 'sometimes', because: 'Soot builds up over repeated cold starts.', source: 'W3' }],
    moved: [
      { by: { duty: ['short trips'] }, how: 'much likelier', because: 'It is used so.', source: 'S14' },
      { by: { warm: false }, how: 'likelier', because: 'It was not warm.', source: COMMON_PRACTICE },
      { by: { tag: 'cold weather' }, how: 'likelier', because: 'Cold prolongs the warming.', source: COMMON_PRACTICE },
      { by: { duty: ['full load', 'steady cruise'] }, how: 'much less likely', because: 'It ran under load.', source: COMMON_PRACTICE },
      { by: { use: ['aircraft'] }, how: 'much less likely', because: 'Aircraft are warmed up before power.', source: COMMON_PRACTICE },
      { by: { stop: ['clean cut'] }, how: 'less likely', because: 'It was stopped from load.', source: COMMON_PRACTICE },
      { by: { use: ['small', 'stationary', 'industrial', 'competition'] }, how: 'less likely', because: 'Short trips are the use of a road vehicle.', source: COMMON_PRACTICE },
    ],
    cure: 'Let it get warm under load now and then.',
    checks: ['duty-interview'],
  },
  {
    id: 'slow-light-use',
    name: 'Slow, light use',
    synonyms: [
      'prolonged low-speed driving', 'low-speed operation', 'light load', 'continuous light load', 'town driving', 'low-power operation',
      'gentle driving', 'constant low load', 'engine never worked hard', 'trolling', 'slow-speed driving',
    ],
    scope: 'engine',
    kind: 'use',
    prior: 'common',
    makes: [
      { condition: 'dry-soot', strength: 'usually', because: 'Light load does not heat the nose enough to clean it.', source: ['S14', 'S17'] },
      { condition: 'runs-cold', strength: 'often', because: 'The nose stays below its self-cleaning temperature.', source: 'S17' },
      { condition: 'hard-carbon', strength: 'rarely', because: 'Over long time the carbon bakes hard.', source: 'S17' },
    ],
    shows: [],
    gives: [{ symptom: 'rough idle', strength: 'rarely', because: 'Sooted plugs miss at idle.', source: COMMON_PRACTICE }],
    moved: [
      { by: { duty: ['light load', 'town'] }, how: 'much likelier', because: 'It is used so.', source: 'S17' },
      { by: { duty: ['full load', 'steady cruise'] }, how: 'much less likely', because: 'It ran under load.', source: COMMON_PRACTICE },
      { by: { stop: ['clean cut'] }, how: 'less likely', because: 'It was stopped from load.', source: COMMON_PRACTICE },
      { by: { use: ['marine'] }, how: 'likelier', because: 'Boats run slow for hours.', source: COMMON_PRACTICE },
    ],
    cure: 'Give it a spell of load now and then.',
    checks: ['duty-interview'],
  },
  {
    id: 'flooded-start',
    name: 'Flooded when starting',
    synonyms: [
      'flooded engine', 'over-primed', 'flooding', 'too much fuel at the start', 'over-priming', 'excessive cranking', 'over-choked start',
      'too much priming', 'failed start', 'starting fuel flooded the cylinders',
    ],
    scope: 'engine',
    kind: 'use',
    prior: 'occasional',
    makes: [
      { condition: 'fuel-wet', strength: 'almost always', because: 'Starting fuel wets the whole set.', source: ['W13', 'S01'] },
      { condition: 'dry-soot', strength: 'rarely', because: 'Failed starts leave soot.', source: 'S01' },
    ],
    shows: [],
    gives: [
      { symptom: 'flooded', strength: 'almost always', because: 'That is the name for it.', source: 'W13' },
      { symptom: 'no start', strength: 'often', because: 'Wet plugs do not spark.', source: 'W13' },
      { symptom: 'hard start', strength: 'often', because: 'Wet plugs do not spark well.', source: 'W13' },
      { symptom: 'fuel smell', strength: 'often', because: 'The fuel is smelt.', source: 'W13' },
    ],
    moved: [
      { by: { tag: 'cold weather' }, how: 'likelier', because: 'More fuel is used to start.', source: COMMON_PRACTICE },
      { by: { tag: 'choke sticking' }, how: 'likelier', because: 'The choke floods it.', source: COMMON_PRACTICE },
    ],
    cure: 'Dry the plugs, crank with the throttle open, start without choke.',
    checks: ['duty-interview', 'choke-look'],
  },
];
