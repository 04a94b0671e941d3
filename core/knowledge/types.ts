import type { Verdict } from '../../shared/vocabulary/verdicts.ts';
import type { SwapPart } from '../../shared/vocabulary/checks.ts';
import type { ConditionTag, Duty, Fuel, Stop, SymptomTag } from '../../shared/vocabulary/conditions.ts';
import type { IgnitionKind, MixtureKind, Position, Use } from '../../shared/vocabulary/engine.ts';
import type { CylinderFindingName, CylinderFindingValue, PlugFindingName, PlugFindingValue } from './findings.ts';
import type { Move, Prior, Strength } from './strengths.ts';

/*
 * The network in three layers, each line with its reason and its source:
 *
 *   causes  --make-->  conditions of one plug  --show-->  findings on that plug
 *   causes  --show-->  findings on the cylinder (compression, spark, borescope ...)
 *   causes and conditions  --give-->  symptoms of the engine
 *
 * Black, matt soot and a sooty rim are three signs of one condition; they make the condition sure, and the causes gain once.
 */

/** Where a line comes from: an id of `sources.ts`, or one of the honest answers below. */
export type SourceId = string;
export const COMMON_PRACTICE = 'common practice';
export const FROM_MEMORY = 'from memory';
/** A line that the people of a workshop added on their own word. The program's own knowledge has none. */
export const OWN_LINE = 'own line';

/** What a source says that contradicts a line. */
export type Dissent = { readonly source: SourceId; readonly says: string };

type Grounds = {
  /** The reason in plain words, one sentence. */
  readonly because: string;
  /** One source or several that agree. */
  readonly source: SourceId | readonly SourceId[];
  /** A source that says otherwise, or several. Shown, never silently settled. */
  readonly against?: Dissent | readonly Dissent[];
  /** Who of the workshop added this line; absent on the program's own. */
  readonly addedBy?: string;
};

/** With the condition alone on the plug, the finding takes this value with the probability the word stands for. */
export type Appearance = {
  [F in PlugFindingName]: { readonly finding: F; readonly is: PlugFindingValue<F>; readonly strength: Strength } & Grounds;
}[PlugFindingName];

export type SymptomLink = { readonly symptom: SymptomTag; readonly strength: Strength } & Grounds;

/** A state one plug can be in. `verdict` is what the plug is called while this condition leads; harmless states are called normal. */
export type Condition = {
  readonly id: string;
  readonly name: string;
  readonly verdict: Exclude<Verdict, 'undetermined'>;
  /** Which way the tip's temperature is off while this condition holds. */
  readonly thermal?: 'cold' | 'hot';
  /** How likely the condition is without any listed cause. */
  readonly leak: number;
  /** What it is and what it does, in one or two sentences. */
  readonly meaning: string;
  readonly cure: string;
  /** What a change of heat value can and cannot do here. */
  readonly heatRule: 'leave' | 'never first' | 'colder once causes are cleared' | 'hotter for a whole set once causes are cleared';
  readonly shows: readonly Appearance[];
  readonly gives: readonly SymptomLink[];
};

/** One thing known of the engine, its use or its fitting. Fields not recorded match nothing. */
export type Circumstance =
  | { readonly tag: ConditionTag }
  | { readonly fuel: readonly Fuel[] }
  | { readonly duty: readonly Duty[] }
  | { readonly stop: readonly Stop[] }
  | { readonly use: readonly Use[] }
  | { readonly cycle: 'four-stroke' | 'two-stroke' }
  | { readonly aspiration: 'natural' | 'boosted' }
  | { readonly cooling: 'liquid' | 'air' }
  | { readonly mixture: readonly MixtureKind[] }
  | { readonly ignition: readonly IgnitionKind[] }
  | { readonly warm: boolean }
  /** Relative air-fuel ratio measured at the exhaust. */
  | { readonly lambda: 'rich' | 'lean' | 'right' }
  | { readonly coolant: 'cold' | 'hot' }
  | { readonly ambient: 'cold' }
  | { readonly altitude: 'high' }
  /** Which of the two plugs of a cylinder it is. */
  | { readonly position: readonly Position[] }
  /** Distance or hours on these plugs. */
  | { readonly served: 'new' | 'long' }
  /** The plug in the hole against the plug the engine asks for. */
  | { readonly fitted: 'hotter' | 'colder' | 'as specified' | 'not as specified' | 'longer reach' | 'shorter reach' | 'other seat' };

/** A cause exists only where its part exists; what is not recorded does not rule it out. */
export type Needs = {
  readonly cycle?: 'four-stroke' | 'two-stroke';
  readonly mixture?: readonly MixtureKind[];
  readonly ignition?: readonly IgnitionKind[];
  readonly use?: readonly Use[];
  readonly notUse?: readonly Use[];
  readonly aspiration?: 'boosted';
  readonly cooling?: 'liquid' | 'air';
  readonly fuel?: readonly Fuel[];
  readonly plugsPerCylinder?: 2;
  /** It speaks of one cylinder against the others, or of all together: with one cylinder there is no such thing. */
  readonly cylinders?: 'several';
};

/**
 * Who shares the cause. `mixture group`, `coil` and `ignition set` come from the engine record; a group of one cylinder is that cylinder's own part.
 * `neighbours` is a pair over one gasket edge. `ends` are the first and last cylinders of the rows, `middle` those between.
 */
export type CauseScope = 'plug' | 'cylinder' | 'neighbours' | 'mixture group' | 'coil' | 'ignition set' | 'bank' | 'ends' | 'middle' | 'lower plugs' | 'engine';

export type CylinderShow = {
  [F in CylinderFindingName]: { readonly finding: F; readonly is: CylinderFindingValue<F>; readonly strength: Strength } & Grounds;
}[CylinderFindingName];

export type Cause = {
  readonly id: string;
  readonly name: string;
  /** Other ways the trade says the same. */
  readonly synonyms: readonly string[];
  readonly scope: CauseScope;
  /** `harmless` explains an appearance without anything to put right. */
  readonly harmless?: true;
  /** `oil`, `detonation`, `pre-ignition`, `mechanical` bar any step toward hotter. */
  readonly kind: 'mixture' | 'ignition' | 'heat value' | 'temperature' | 'oil' | 'fuel' | 'deposit' | 'coolant' | 'detonation' | 'pre-ignition' | 'mechanical' | 'fitting' | 'use' | 'age' | 'harmless';
  /** The plug's heat value itself is wrong; a step this way is the cure. */
  readonly heatStep?: 'hotter' | 'colder';
  /** The exchangeable part that carries the fault: it moves with the part in a swap test. */
  readonly part?: SwapPart;
  readonly prior: Prior;
  readonly needs?: Needs;
  readonly makes: readonly ({ readonly condition: string; readonly strength: Strength } & Grounds)[];
  readonly shows: readonly CylinderShow[];
  readonly gives: readonly SymptomLink[];
  readonly moved: readonly ({ readonly by: Circumstance; readonly how: Move } & Grounds)[];
  /** What to do about it, as an instruction. */
  readonly cure: string;
  /** Ids of checks that tell, most telling first. */
  readonly checks: readonly string[];
};

/** A check that can be made next. Either it yields a finding on a cylinder, or it looks for causes directly. */
export type Check = {
  readonly id: string;
  readonly name: string;
  readonly scope: 'cylinder' | 'engine';
  /** Working time for one cylinder or for the engine, minutes. Expert estimate. */
  readonly minutes: number;
  readonly tells:
    | { readonly finding: CylinderFindingName }
    | { readonly looksFor: readonly string[]; readonly finds: Strength; readonly falselyFinds: Strength };
  /** What it finds on the plug itself; where that has been noted of every plug the check has been made. */
  readonly reads?: readonly PlugFindingName[];
  /** How to do it and what the limit is, in one to three sentences. */
  readonly how: string;
  readonly needs?: Needs;
  /** It is made on the running engine, so not on one that will not start. */
  readonly running?: true;
  /** Ids of cautions that go with it. */
  readonly cautions: readonly string[];
} & Grounds;

/** A finding, a symptom or a circumstance, as a condition of a stop rule or a caution. */
export type Term =
  | { readonly plug: PlugFindingName; readonly is: readonly string[] }
  | { readonly cylinder: CylinderFindingName; readonly is: readonly string[] }
  | { readonly symptom: SymptomTag }
  | { readonly circumstance: Circumstance };

/** Forbids a step toward hotter when one of its terms holds anywhere. `sign` names what was seen, in a few words. */
export type Bar = { readonly id: string; readonly sign: string; readonly anyOf: readonly Term[] } & Grounds;

/** Outranks every belief. Fires when all terms of one alternative hold, on one plug and its cylinder. */
export type StopRule = { readonly id: string; readonly words: string; readonly anyOf: readonly (readonly Term[])[] } & Grounds;

/** Shown always when `when` is absent, otherwise when one of its terms holds somewhere in the sheet. */
export type Caution = { readonly id: string; readonly words: string; readonly when?: readonly Term[] } & Grounds;

/** What calls for a second look: two findings that hardly ever stand on one plug together, or one that says less than could be seen. */
export type Contradiction = {
  readonly id: string;
  readonly first: { readonly plug: PlugFindingName; readonly is: readonly string[] };
  readonly second?: { readonly plug: PlugFindingName; readonly is: readonly string[] };
  readonly words: string;
} & Grounds;

export type Source = { readonly id: SourceId; readonly title: string; readonly read: string };

export type Knowledge = {
  readonly version: string;
  readonly sources: readonly Source[];
  readonly conditions: readonly Condition[];
  readonly causes: readonly Cause[];
  readonly checks: readonly Check[];
  readonly stopRules: readonly StopRule[];
  readonly barsOnHotter: readonly Bar[];
  readonly cautions: readonly Caution[];
  readonly contradictions: readonly Contradiction[];
};
