import type { BORESCOPE, INJECTORS, SPARKS, SPEED_DROPS, SwapPart } from '../../../shared/vocabulary/checks.ts';

const sparks: Record<(typeof SPARKS)[number], string> = { strong: 'Strong', present: 'Present', weak: 'Weak', none: 'None' };
const injectors: Record<(typeof INJECTORS)[number], string> = { works: 'Works', dead: 'Dead', leaks: 'Leaks', restricted: 'Restricted' };
const speedDrops: Record<(typeof SPEED_DROPS)[number], string> = { clear: 'Clear', small: 'Small', none: 'None' };
const borescope: Record<(typeof BORESCOPE)[number], string> = {
  clean: 'Clean', 'washed clean': 'Washed clean', 'wet with oil': 'Wet with oil', 'wet with water': 'Wet with water', 'piston damage': 'Piston damage',
  'valve damage': 'Valve damage', deposits: 'Deposits',
};
const parts: Record<SwapPart, string> = { plug: 'plug', lead: 'lead', coil: 'coil', injector: 'injector' };

export const checks = {
  words: { spark: sparks, injector: injectors, speedDropWhenCut: speedDrops, borescope },
  parts,
  title: 'Checks on the cylinders',
  about: 'Write down what was measured, in any order; what is left open counts for nothing. Arrow keys and Enter move from cell to cell. The engine maker\u2019s own limits and procedures come before every general figure.',
  cylinder: 'Cylinder',
  cylinderNumber: (number: number): string => `Cylinder ${number}`,
  notMade: '–',
  notMadeName: 'not made',
  cell: (column: string, cylinder: number): string => `${column}, cylinder ${cylinder}`,
  columns: {
    compressionKPa: 'Compression, dry',
    compressionWetKPa: 'Compression, oil added',
    leakDownPercent: 'Leak-down, loss',
    differential: 'Differential, held / supply',
    spark: 'Spark',
    injector: 'Injector',
    speedDropWhenCut: 'Speed drop when cut',
    egtC: 'Exhaust gas',
    borescope: 'Borescope',
  },
  groups: {
    compression: { title: 'Compression', caution: 'Ignition and fuel off, plugs out, throttle open. Hands clear of belts and fan.' },
    air: { title: 'Air into the cylinder', caution: 'Air can turn the engine: piston at top dead centre, hands clear. Safety glasses; never air at the skin.' },
    spark: { title: 'Spark and fuel', caution: 'Ignition voltage can kill, also with the engine stopped; not with a pacemaker. Fuel vapour burns; pressure pierces skin.' },
    running: { title: 'Running', caution: 'Never pull a lead on a running engine. Hot exhaust, moving belts.' },
    view: { title: 'A look inside', caution: 'Let it cool.' },
  },
  aircraft: 'Aircraft: treat every magneto as live and the propeller as about to turn. Approved data and a licensed person come first.',
  differential: {
    hint: (unit: string): string => `Held / supply in ${unit}, as in 500/550.`,
    problem: (low: string, high: string, unit: string): string => `Write held / supply, such as 500/550: held at most the supply, supply ${low} to ${high} ${unit}.`,
    loss: (percent: string): string => `loss ${percent} %`,
  },
  odd: {
    title: 'Does one cylinder stand out?',
    checks: { compression: 'Compression', 'leak-down': 'Leak-down', differential: 'Air loss against supply', exhaust: 'Exhaust temperature' },
    shown: (cylinder: number): string => `cylinder ${cylinder} differs from the rest by more than chance and gauge explain.`,
    notShown: (few: boolean): string => `no cylinder is shown to differ${few ? '. With so few, a real loss of a tenth is often not shown' : ''}.`,
    tooFew: 'too few values to tell; four are needed.',
    about: 'Up to ten cylinders two tests must agree (distance from the median, and Dixon’s Q at 90 %). Banks are taken apart first. “Not shown” is no proof that all are alike.',
  },
  spread: (percent: string, lowest: number, best: number): string => `Lowest (cylinder ${lowest}) is ${percent} % of the highest (cylinder ${best}). Under 75 % is a fault on most car engines.`,
  tried: {
    title: 'Parts tried',
    about: 'Swap one part at a time with a good cylinder and see which way the fault goes, or put a known-good part in.',
    caution: 'Ignition off before a lead, coil or plug is touched. Blow out the well before a plug comes out, with safety glasses on.',
    none: 'Nothing tried yet.',
    inCylinder: 'In cylinder',
    part: 'Part',
    how: 'What was done',
    hows: { swap: 'Swapped with another cylinder', substitute: 'Known-good part put in' },
    with: 'Swapped with cylinder',
    result: 'The fault',
    followed: 'Went with the part',
    stayed: 'Stayed',
    cured: 'Was cured',
    notCured: 'Remained',
    choose: 'Choose',
    needs: 'Choose the cylinder, the part and what was done; the last answer writes it down.',
    swapLine: (cylinder: number, part: string, to: number, followed: boolean): string =>
      `Cylinder ${cylinder}: ${part} swapped with cylinder ${to}. The fault ${followed ? `went with the ${part}` : `stayed in cylinder ${cylinder}`}.`,
    substituteLine: (cylinder: number, part: string, cured: boolean): string =>
      `Cylinder ${cylinder}: a known-good ${part} was put in. The fault ${cured ? 'was cured' : 'remained'}.`,
    remove: (line: string): string => `Remove: ${line}`,
    removeWord: 'Remove',
  },
};
