import { CYLINDER_FINDINGS, PLUG_FINDINGS } from '../../../core/knowledge/findings.ts';
import type { Knowledge } from '../../../core/knowledge/types.ts';
import { complaintsAbout, type LineField } from '../../../core/shop-lines/complaints.ts';
import { shopLine, type ShopCircumstance, type ShopLine, type ShopSays } from '../../../shared/formats/shop-lines.v1.ts';
import { CONDITION_TAGS, DUTIES, FUELS, STOPS, type SymptomTag } from '../../../shared/vocabulary/conditions.ts';
import { ASPIRATIONS, COOLINGS, CYCLES, IGNITION_KINDS, MIXTURE_KINDS, USES } from '../../../shared/vocabulary/engine.ts';
import type { MoveWord, StrengthWord } from '../../../shared/vocabulary/knowledge.ts';

export type Kind = ShopSays['kind'];

/** A line as far as it is filled in. `id`: null until it is added. */
export type LineDraft = {
  readonly id: string | null;
  readonly on: boolean;
  readonly of?: string | undefined;
  readonly kind?: Kind | undefined;
  readonly condition?: string | undefined;
  readonly finding?: string | undefined;
  readonly is?: string | undefined;
  readonly symptom?: SymptomTag | undefined;
  readonly when?: string | undefined;
  readonly strength?: StrengthWord | undefined;
  readonly how?: MoveWord | undefined;
  readonly because: string;
  readonly by: string;
};

const each = <N extends keyof ShopCircumstance>(name: N, values: readonly ShopCircumstance[N][]): ShopCircumstance[] =>
  values.map((value) => ({ [name]: value }));

/** Every circumstance that a line can name, by its JSON, which serves as its key. */
export const CIRCUMSTANCES: ReadonlyMap<string, ShopCircumstance> = new Map([
  ...each('tag', CONDITION_TAGS), ...each('fuel', FUELS), ...each('duty', DUTIES), ...each('stop', STOPS), ...each('use', USES), ...each('cycle', CYCLES),
  ...each('aspiration', ASPIRATIONS), ...each('cooling', COOLINGS), ...each('mixture', MIXTURE_KINDS), ...each('ignition', IGNITION_KINDS),
].map((when) => [JSON.stringify(when), when]));

/** What a line can say of this cause or condition. */
export const kindsFor = (of: string | undefined, { conditions }: Knowledge): readonly Kind[] =>
  (conditions.some(({ id }) => id === of) ? ['shows', 'gives'] : ['makes', 'shows', 'gives', 'moved']);

/** What can be looked at: on the plug for a condition, on the cylinder for a cause, with the values each can have. Trials of parts are left out. */
export function findingsFor(of: string | undefined, { conditions }: Knowledge): Readonly<Record<string, readonly string[]>> {
  if (conditions.some(({ id }) => id === of)) return PLUG_FINDINGS;
  return Object.fromEntries(Object.entries(CYLINDER_FINDINGS).filter(([name]) => !/^(swap|known-good) /.test(name)));
}

export function draftOf(line: ShopLine): LineDraft {
  const { says, ...rest } = line;
  const when = says.kind === 'moved' ? JSON.stringify(says.when) : undefined;
  return { ...rest, ...says, when };
}

/** What the draft says; undefined while it is not whole. */
function saysOf({ of, kind, condition, finding, is, symptom, when, strength, how }: LineDraft): ShopSays | undefined {
  const said = { makes: { kind, of, condition, strength }, shows: { kind, of, finding, is, strength }, gives: { kind, of, symptom, strength },
    moved: { kind, of, when: CIRCUMSTANCES.get(when ?? ''), how } };
  const parsed = shopLine.shape.says.safeParse(said[kind ?? 'makes']);
  return parsed.success ? parsed.data : undefined;
}

/** Fields that are still open. */
function open({ of, kind, condition, finding, is, symptom, when, strength, how }: LineDraft): readonly (LineField | 'kind')[] {
  const wanted: readonly (readonly [LineField | 'kind', unknown])[] = [
    ['of', of], ['kind', kind], ['what', { makes: condition, shows: finding, gives: symptom, moved: when }[kind ?? 'makes']],
    ...(kind === 'shows' ? [['is', is] as const] : []), ['strength', kind === 'moved' ? how : strength],
  ];
  return wanted.filter(([, value]) => value === undefined).map(([field]) => field);
}

export type Problems = { readonly [F in LineField | 'kind']?: string };

/** A draft as a line where it can be taken, and what is wrong at which field where it cannot. */
export type Checked = { readonly line: ShopLine | undefined; readonly problems: Problems };

/**
 * Holds a draft against the rules of the knowledge.
 * @param knowledge with the other lines of the workshop, without this one
 * @param missing what is said at a field that is still open
 * @param sentence what a complaint is in the person's language
 */
export function check(draft: LineDraft, knowledge: Knowledge, missing: string, sentence: (english: string) => string): Checked {
  const says = saysOf(draft);
  const [because, by] = [draft.because.trim(), draft.by.trim()];
  const line = { id: draft.id ?? 'new-line', on: draft.on, by, because, says: says ?? ({ kind: 'makes', of: '', condition: '', strength: 'often' } as const) };
  const complaints = complaintsAbout(line, knowledge).filter(({ field }) => says !== undefined || field === 'because' || field === 'by');
  const said = [...complaints].reverse().map(({ field, message }) => [field, sentence(message)] as const);
  const problems: Problems = Object.fromEntries([...open(draft).map((field) => [field, missing] as const), ...said]);
  return { line: Object.keys(problems).length === 0 ? line : undefined, problems };
}
