import { COMMON_PRACTICE, FROM_MEMORY, type Caution } from './types.ts';

/** What can hurt somebody at this work, said where it can. */
export const CAUTIONS: readonly Caution[] = [
  { id: 'hot-parts', words: 'Let the engine cool: hot parts burn, and the threads of a hot aluminium head tear.', because: 'Steel and aluminium expand differently and threads suffer.', source: 'W6' },
  {
    id: 'high-voltage', words: 'Ignition can kill, running, cranking or merely switched on. Ignition off before touching plugs, leads or coils; never pull a lead on a running engine. Persons with a pacemaker keep away.',
    because: 'Electronic ignition puts deadly voltage on the primary side as well as on the secondary.', source: ['W8', 'W9'],
  },
  { id: 'fuel-vapour', words: 'Fuel vapour stands at open plug holes: disable injection, earth the leads, no sparks, extinguisher at hand.', because: 'Cranking blows an ignitable mixture out of the holes.', source: ['W19', FROM_MEMORY] },
  { id: 'plug-well', words: 'Blow out the plug wells before taking the plugs out, with safety glasses on and never at the skin.', because: 'Grit falls into the cylinder or flies into the eyes.', source: ['S23', 'S14', 'S58'] },
  { id: 'moving-parts', words: 'Keep clear of belts, fans and sleeves. Electric fans may start by themselves.', because: 'Fans are switched by temperature, not by the key.', source: FROM_MEMORY },
  { id: 'exhaust-gas', words: 'Do not run the engine indoors without extraction.', because: 'Exhaust gas poisons without warning.', source: FROM_MEMORY },
  { id: 'grit-in-shell', words: 'After blasting blow the plug out and look into the shell under a light: grit left behind scores the cylinder.', because: 'Abrasive packs inside the firing end, most of all where oil was left on.', source: ['S14', 'W1'] },
  { id: 'solvent', words: 'Cleaning solvent: gloves, ventilation, no long contact, dry before testing.', because: 'Solvents harm skin and lungs and burn.', source: 'S20' },
  { id: 'makers-data', words: 'The engine maker’s own figures and instructions come before anything said here.', because: 'General advice holds only where the engine maker gives no instruction.', source: ['S06', 'S36'] },
  { id: 'heat-value', words: 'Do not fit hotter or colder plugs than specified on a guess: a wrong heat value can wreck the engine.', because: 'Too hot ends in pre-ignition, too cold in fouling.', source: ['W6', 'S10'] },
  {
    id: 'leaded-deposits', words: 'Deposits from leaded fuel are poisonous: no dry brushing or blowing, wet wipes, gloves, respirator when blasting, wash hands, no food, change clothes.',
    when: [
      { circumstance: { fuel: ['leaded petrol', 'avgas'] } }, { circumstance: { use: ['aircraft'] } },
      { plug: 'deposit', is: ['lead beads', 'lead film', 'lead of unknown form'] },
    ],
    because: 'At a flight school the short-term lead limit was nearly reached while blasting plugs.', source: ['S48', 'S49'],
  },
  {
    id: 'airworthiness', words: 'Aircraft: approved data, approved plugs, calibrated torque wrench and a log entry; what lies beyond owner maintenance belongs to a licensed person.',
    when: [{ circumstance: { use: ['aircraft'] } }], because: 'Each certified engine is approved with particular plugs and heat range.', source: ['S10', 'S06'],
  },
  {
    id: 'live-propeller', words: 'Treat the propeller as live: a magneto that is not earthed fires when it is turned.',
    when: [{ circumstance: { use: ['aircraft'] } }], because: 'A magneto makes its own current.', source: FROM_MEMORY,
  },
  {
    id: 'direct-injection', words: 'Do not open high-pressure fuel lines: a jet at up to 35 MPa goes through skin.',
    when: [{ circumstance: { mixture: ['direct injection'] } }], because: 'Fuel under such pressure pierces gloves and skin.', source: FROM_MEMORY,
  },
  {
    id: 'road-law', words: 'On road vehicles changes to mixture, ignition, plugs or emission parts may be unlawful.',
    when: [{ circumstance: { use: ['road'] } }], because: 'Plugs and mixture count as emission parts in some places.', source: ['W22', FROM_MEMORY],
  },
  {
    id: 'public-road', words: 'No full-load readings on public roads: dynamometer or closed course.',
    when: [{ circumstance: { use: ['road'] } }, { circumstance: { duty: ['full load'] } }], because: 'A full-load pull with a cut of the ignition is no manoeuvre for traffic.', source: COMMON_PRACTICE,
  },
  {
    id: 'catalyst', words: 'Do not keep running on a dead cylinder: its fuel burns in the catalyst and overheats it.',
    when: [{ symptom: 'misfire' }, { plug: 'firing', is: ['misses'] }, { plug: 'deposit', is: ['wet fuel'] }], because: 'Unburnt fuel burns in the catalyst.', source: FROM_MEMORY,
  },
  {
    id: 'pre-ignition', words: 'Signs of knock or pre-ignition: stop, and do not run one more to see.',
    when: [
      { symptom: 'knock under load' }, { plug: 'specks', is: ['dark pepper', 'grey metallic', 'shiny beads'] }, { plug: 'noseSurface', is: ['blistered'] },
      { plug: 'centreElectrode', is: ['melted', 'blistered'] }, { plug: 'groundElectrode', is: ['melted'] },
    ],
    because: 'Engines fail within minutes of pre-ignition.', source: 'S67',
  },
  {
    id: 'race-fuel', words: 'Race and test fuels may hold benzene and alcohols: no skin contact, no breathing of the vapour.',
    when: [{ circumstance: { use: ['competition'] } }, { circumstance: { fuel: ['methanol', 'E85', 'ethanol'] } }], because: 'Benzene causes cancer and methanol blinds.', source: ['S30', COMMON_PRACTICE],
  },
  {
    id: 'leak-down-air', words: 'Leak-down air can turn the engine: piston exactly at top, keep clear, use the lower pressure.',
    because: 'Several hundred kilopascal on a piston are enough to spin the crank.', source: ['S58', FROM_MEMORY],
  },
  {
    id: 'precious-metal', words: 'No wire brush and no gapping by force on platinum or iridium tips.',
    because: 'Brushes and bends break fine tips.', source: 'W1',
  },
  {
    id: 'resistor-stays', words: 'Do not take resistance out of an ignition that asks for it: control units and radios suffer, and it may be unlawful.',
    when: [{ plug: 'resistor', is: ['low'] }, { circumstance: { tag: 'resistor lead added' } }], because: 'One coil system demands a least resistance to protect its control unit.', source: ['W8', 'W16'],
  },
];
