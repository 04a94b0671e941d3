import { COMMON_PRACTICE, FROM_MEMORY, type Cause } from '../types.ts';

/** Water and coolant in the chamber. */
export const coolantCauses: readonly Cause[] = [
  {
    id: 'gasket-coolant-leak',
    name: 'Head gasket leaks coolant',
    synonyms: [
      'blown head gasket', 'head gasket failure', 'coolant leak into the cylinder', 'leaking head gasket', 'coolant past the head gasket',
      'gasket blown to the water jacket', 'internal coolant leak',
    ],
    scope: 'cylinder',
    kind: 'coolant',
    prior: 'occasional',
    needs: { cooling: 'liquid' },
    makes: [
      { condition: 'coolant-washed', strength: 'often', because: 'Steam scours the leaking cylinder bare.', source: FROM_MEMORY },
      { condition: 'coolant-residue', strength: 'often', because: 'Coolant dries on the plug.', source: 'W12' },
      { condition: 'unfired', strength: 'rarely', because: 'A wet charge does not light.', source: 'S58' },
    ],
    shows: [
      { finding: 'compression', is: 'watch', strength: 'sometimes', because: 'The gasket leaks both ways.', source: 'S15' },
      { finding: 'compression', is: 'low', strength: 'sometimes', because: 'The gasket leaks both ways.', source: 'S15' },
      { finding: 'leakDown', is: 'worn', strength: 'sometimes', because: 'Bubbles rise in the radiator.', source: ['S58', 'W20'] },
      { finding: 'leakDown', is: 'fault', strength: 'often', because: 'Bubbles rise in the radiator.', source: ['S58', 'W20'] },
      { finding: 'borescope', is: 'washed clean', strength: 'often', because: 'The piston is steam-cleaned.', source: FROM_MEMORY },
      { finding: 'borescope', is: 'wet with water', strength: 'sometimes', because: 'The piston is steam-cleaned.', source: FROM_MEMORY },
      { finding: 'speedDropWhenCut', is: 'small', strength: 'sometimes', because: 'The wet cylinder pulls less.', source: COMMON_PRACTICE },
    ],
    gives: [
      { symptom: 'coolant loss', strength: 'usually', because: 'The coolant goes through the engine.', source: 'S58' },
      { symptom: 'white smoke', strength: 'often', because: 'It leaves as steam.', source: 'S58' },
      { symptom: 'overheating', strength: 'often', because: 'Gas blows into the coolant.', source: 'S58' },
      { symptom: 'misfire when cold', strength: 'sometimes', because: 'Coolant seeps in overnight.', source: COMMON_PRACTICE },
      { symptom: 'hard start', strength: 'sometimes', because: 'Coolant seeps in overnight.', source: COMMON_PRACTICE },
    ],
    moved: [
      { by: { tag: 'head gasket doubtful' }, how: 'much likelier', because: 'The gasket is suspected.', source: COMMON_PRACTICE },
      { by: { tag: 'cooling fault found' }, how: 'likelier', because: 'Overheating warps heads.', source: COMMON_PRACTICE },
    ],
    cure: 'Pressure-test the cooling system, leak-down with a look at the radiator; renew the gasket.',
    checks: ['coolant-pressure', 'leak-down-test', 'borescope', 'compression-test'],
  },
  {
    id: 'head-cracked',
    name: 'Head or liner cracked into the water',
    synonyms: [
      'cracked head', 'cracked cylinder head', 'porous casting', 'liner seal leaking', 'crack into the water jacket', 'cracked liner',
      'cracked block',
    ],
    scope: 'cylinder',
    kind: 'coolant',
    prior: 'very rare',
    needs: { cooling: 'liquid' },
    makes: [
      { condition: 'coolant-washed', strength: 'often', because: 'Steam scours the leaking cylinder bare.', source: FROM_MEMORY },
      { condition: 'coolant-residue', strength: 'often', because: 'Coolant dries on the plug.', source: 'W12' },
    ],
    shows: [
      { finding: 'leakDown', is: 'worn', strength: 'sometimes', because: 'Bubbles rise in the radiator.', source: 'S58' },
      { finding: 'leakDown', is: 'fault', strength: 'often', because: 'Bubbles rise in the radiator.', source: 'S58' },
      { finding: 'borescope', is: 'washed clean', strength: 'often', because: 'The piston is steam-cleaned.', source: FROM_MEMORY },
      { finding: 'borescope', is: 'wet with water', strength: 'sometimes', because: 'The piston is steam-cleaned.', source: FROM_MEMORY },
    ],
    gives: [
      { symptom: 'coolant loss', strength: 'usually', because: 'The coolant goes through the engine.', source: 'S58' },
      { symptom: 'white smoke', strength: 'often', because: 'It leaves as steam.', source: 'S58' },
      { symptom: 'overheating', strength: 'sometimes', because: 'Gas blows into the coolant.', source: 'S58' },
    ],
    moved: [{ by: { tag: 'cooling fault found' }, how: 'likelier', because: 'Overheating cracks heads.', source: COMMON_PRACTICE }],
    cure: 'Pressure-test head and block.',
    checks: ['coolant-pressure', 'leak-down-test', 'borescope'],
  },
  {
    id: 'gasket-between',
    name: 'Head gasket leaks between the two cylinders',
    synonyms: [
      'blown head gasket between cylinders', 'head gasket between adjacent cylinders', 'adjacent cylinders leaking into each other',
      'gasket burnt between two bores', 'compression leaks to the neighbour', 'blown gasket bridge',
    ],
    scope: 'neighbours',
    kind: 'mechanical',
    prior: 'rare',
    makes: [
      { condition: 'dry-soot', strength: 'often', because: 'Both cylinders lose compression and burn badly.', source: ['S14', 'S18'] },
      { condition: 'fuel-wet', strength: 'sometimes', because: 'Neither cylinder lights well.', source: COMMON_PRACTICE },
      { condition: 'unfired', strength: 'often', because: 'Neither cylinder fires well.', source: COMMON_PRACTICE },
    ],
    shows: [
      {
        finding: 'compression',
        is: 'low',
        strength: 'almost always',
        because: 'Two neighbours low means the gasket between them.',
        source: ['S15', 'S18', 'W4'],
      },
      { finding: 'compressionWet', is: 'unchanged', strength: 'almost always', because: 'Oil does not raise it.', source: ['S18', 'W4'] },
      { finding: 'leakDown', is: 'fault', strength: 'almost always', because: 'Air comes out at the next plug hole.', source: 'S58' },
      { finding: 'speedDropWhenCut', is: 'small', strength: 'often', because: 'Both pull badly.', source: COMMON_PRACTICE },
      { finding: 'speedDropWhenCut', is: 'none', strength: 'sometimes', because: 'Both pull badly.', source: COMMON_PRACTICE },
    ],
    gives: [
      { symptom: 'misfire', strength: 'often', because: 'Two cylinders miss.', source: COMMON_PRACTICE },
      { symptom: 'rough running', strength: 'usually', because: 'Two cylinders miss.', source: COMMON_PRACTICE },
      { symptom: 'loss of power', strength: 'often', because: 'Two cylinders pull badly.', source: 'S13' },
      { symptom: 'rough idle', strength: 'often', because: 'The vacuum swings by a third.', source: COMMON_PRACTICE },
    ],
    moved: [{ by: { tag: 'head gasket doubtful' }, how: 'much likelier', because: 'The gasket is suspected.', source: COMMON_PRACTICE }],
    cure: 'Renew the gasket and check head and block for flatness.',
    checks: ['compression-test', 'leak-down-test', 'vacuum-gauge'],
  },
  {
    id: 'water-through-exhaust',
    name: 'Water drawn in through exhaust or inlet',
    synonyms: [
      'water ingress', 'exhaust manifold leaking water', 'riser leaking', 'water in the intake', 'rain or wash water in the cylinder',
      'water drawn back through the exhaust', 'seawater in the cylinder', 'condensation in the cylinder',
    ],
    scope: 'cylinder',
    kind: 'coolant',
    prior: 'very rare',
    makes: [
      { condition: 'coolant-residue', strength: 'usually', because: 'Raw water dries on the plug.', source: COMMON_PRACTICE },
      { condition: 'coolant-washed', strength: 'rarely', because: 'Steam scours it.', source: COMMON_PRACTICE },
    ],
    shows: [{ finding: 'borescope', is: 'wet with water', strength: 'often', because: 'Water stands on the piston.', source: COMMON_PRACTICE }],
    gives: [
      { symptom: 'hard start', strength: 'often', because: 'Water in the cylinder.', source: COMMON_PRACTICE },
      { symptom: 'misfire', strength: 'sometimes', because: 'Water shorts the plug.', source: COMMON_PRACTICE },
      { symptom: 'no start', strength: 'sometimes', because: 'Water in the cylinder locks or drowns it.', source: COMMON_PRACTICE },
    ],
    moved: [
      { by: { use: ['marine'] }, how: 'much likelier', because: 'Water-cooled exhausts leak back.', source: COMMON_PRACTICE },
      { by: { tag: 'stored long' }, how: 'likelier', because: 'Water collects in store.', source: COMMON_PRACTICE },
    ],
    cure: 'Do not crank with plugs in. Drain, dry, oil the bores, and find the way in.',
    checks: ['borescope', 'coolant-pressure'],
  },
];
