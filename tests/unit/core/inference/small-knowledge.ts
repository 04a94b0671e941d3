import fc from 'fast-check';
import { STRENGTHS, type Prior, type Strength } from '../../../../core/knowledge/strengths.ts';
import type { Cause, Condition, Knowledge } from '../../../../core/knowledge/types.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';

/** Small made-up networks: their facts mean nothing, only their arithmetic is tested. */
const grounds = { because: 'made up for a test', source: 'common practice' };

export const condition = (id: string, parts: Partial<Condition>): Condition => ({
  id,
  name: id,
  verdict: 'dry carbon fouling',
  leak: 0.01,
  meaning: '',
  cure: '',
  heatRule: 'leave',
  shows: [],
  gives: [],
  ...parts,
});

export const cause = (id: string, parts: Partial<Cause>): Cause => ({
  id,
  name: id,
  synonyms: [],
  scope: 'engine',
  kind: 'mixture',
  prior: 'common',
  makes: [],
  shows: [],
  gives: [],
  moved: [],
  cure: `cure ${id}`,
  checks: [],
  ...parts,
});

export const knowledge = (conditions: readonly Condition[], causes: readonly Cause[]): Knowledge => ({
  version: 'test',
  sources: [],
  conditions,
  causes,
  checks: [],
  stopRules: [],
  barsOnHotter: [],
  cautions: [],
  contradictions: [],
});

export const shows = (finding: 'noseColour' | 'deposit', is: string, strength: Strength): Condition['shows'][number] =>
  ({ finding, is, strength, ...grounds }) as Condition['shows'][number];
export const makes = (to: string, strength: Strength): Cause['makes'][number] => ({ condition: to, strength, ...grounds });
const gives = (symptom: 'misfire' | 'black smoke', strength: Strength): Cause['gives'][number] => ({ symptom, strength, ...grounds });

const strengthWord = fc.constantFrom(...(Object.keys(STRENGTHS) as Strength[]));
const weakWord = fc.constantFrom<Strength>('often', 'sometimes', 'rarely');
const prior = fc.constantFrom<Prior>('common', 'occasional', 'rare');

export const anyCondition = (id: string): fc.Arbitrary<Condition> =>
  fc
    .record({
      leak: fc.double({ min: 0.001, max: 0.05, noNaN: true }),
      black: weakWord,
      white: fc.option(weakWord),
      soot: fc.option(weakWord),
      smoke: fc.option(strengthWord),
      miss: fc.option(strengthWord),
    })
    .map(({ leak, black, white, soot, smoke, miss }) =>
      condition(id, {
        leak,
        shows: [
          shows('noseColour', 'black', black),
          ...(white ? [shows('noseColour', 'white', white)] : []),
          ...(soot ? [shows('deposit', 'dry soot', soot)] : []),
        ],
        gives: [...(smoke ? [gives('black smoke', smoke)] : []), ...(miss ? [gives('misfire', miss)] : [])],
      }),
    );

export const anyCause = (id: string, conditions: readonly string[]): fc.Arbitrary<Cause> =>
  fc
    .record({
      scope: fc.constantFrom<Cause['scope']>('engine', 'cylinder', 'plug'),
      prior,
      first: strengthWord,
      second: fc.option(strengthWord),
      miss: fc.option(strengthWord),
      low: fc.option(weakWord),
      found: fc.boolean(),
    })
    .map(({ scope, prior: p, first, second, miss, low, found }) =>
      cause(id, {
        scope,
        prior: p,
        makes: [makes(conditions[0] as string, first), ...(second && conditions[1] ? [makes(conditions[1], second)] : [])],
        gives: miss ? [gives('misfire', miss)] : [],
        shows: low ? [{ finding: 'compression', is: 'low', strength: low, ...grounds }] : [],
        moved: found ? [{ by: { tag: 'choke sticking' }, how: 'found', ...grounds }] : [],
      }),
    );

export const anyKnowledge: fc.Arbitrary<Knowledge> = fc
  .tuple(
    anyCondition('a'),
    anyCondition('b'),
    anyCondition('c'),
    anyCause('one', ['a', 'b']),
    anyCause('two', ['b', 'c']),
    anyCause('three', ['c', 'a']),
  )
  .map(([a, b, c, ...causes]) => knowledge([a, b, c], causes));

const anyTip = fc.option(
  fc.record(
    {
      noseColour: fc.constantFrom('black' as const, 'white' as const, 'light tan' as const),
      deposit: fc.constantFrom('dry soot' as const, 'none' as const),
    },
    { requiredKeys: [] },
  ),
  { nil: undefined },
);
const anyPlug = (cylinder: number): fc.Arbitrary<ReadingSheet['plugs'][number]> =>
  anyTip.map((tip) => ({ cylinder, ...(tip === undefined ? {} : { tip }) }));

export const anySmallSheet: fc.Arbitrary<ReadingSheet> = fc
  .record({
    first: anyPlug(1),
    second: anyPlug(2),
    engineMiss: fc.constantFrom('present', 'absent', 'unknown'),
    smoke: fc.boolean(),
    ownMiss: fc.boolean(),
    choke: fc.boolean(),
    compression: fc.boolean(),
  })
  .map(({ first, second, engineMiss, smoke, ownMiss, choke, compression }): ReadingSheet => ({
    format: 'corenose.reading-sheet',
    version: 1,
    engine: { use: 'road', cylinders: 2 },
    plugs: [first, second],
    conditions: choke ? { tags: ['choke sticking'] } : {},
    symptoms: [
      ...(smoke ? [{ what: 'black smoke' as const }] : []),
      ...(engineMiss === 'present' ? [{ what: 'misfire' as const }] : []),
      ...(ownMiss ? [{ what: 'misfire' as const, cylinder: 1 }] : []),
    ],
    symptomsAbsent: engineMiss === 'absent' ? ['misfire'] : [],
    cylinderChecks: compression
      ? [
          { cylinder: 1, compressionKPa: 600 },
          { cylinder: 2, compressionKPa: 1000 },
        ]
      : [],
  }));
