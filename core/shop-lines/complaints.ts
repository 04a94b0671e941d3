import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import { CYLINDER_FINDINGS, PLUG_FINDINGS } from '../knowledge/findings.ts';
import { lintKnowledge, type Breach } from '../knowledge/lint/rule.ts';
import { KNOWLEDGE_RULES } from '../knowledge/lint/rules.ts';
import type { Cause, Condition, Knowledge } from '../knowledge/types.ts';
import { once } from '../once.ts';
import { taught } from './teach.ts';

/** A part of a line that a person fills in. `what`: the condition, finding or symptom, or the circumstance. */
export type LineField = 'of' | 'what' | 'is' | 'strength' | 'because' | 'by';

/** What is wrong with a line, and where. */
export type Complaint = { readonly field: LineField; readonly message: string };

const nearest = (ids: readonly string[], wanted: string): string => {
  const words = new Set(wanted.split('-'));
  const shared = (id: string): number => id.split('-').filter((word) => words.has(word)).length;
  const alike = ids.filter((id) => shared(id) > 0).sort((a, b) => shared(b) - shared(a)).slice(0, 3);
  return alike.length === 0 ? '' : `; did you mean ${alike.join(', ')}?`;
};

type Owner = { readonly cause?: Cause | undefined; readonly condition?: Condition | undefined };

function ownerOf({ says: { kind, of } }: ShopLine, { causes, conditions }: Knowledge): Owner {
  return { cause: causes.find(({ id }) => id === of), condition: kind === 'makes' || kind === 'moved' ? undefined : conditions.find(({ id }) => id === of) };
}

/** A trial of parts follows from the part that a cause names; no line of its own can say it. */
const isTrial = (finding: string): boolean => finding.startsWith('swap ') || finding.startsWith('known-good ');

function complaintOfFinding(line: ShopLine, { cause }: Owner): Complaint[] {
  const { says } = line;
  if (says.kind !== 'shows') return [];
  const findings: Readonly<Record<string, readonly string[]>> = cause === undefined ? PLUG_FINDINGS : CYLINDER_FINDINGS;
  const names = Object.keys(findings).filter((name) => !isTrial(name));
  const values = names.includes(says.finding) ? findings[says.finding] : undefined;
  const whose = cause === undefined ? 'A condition shows on the plug' : 'A cause shows on the cylinder';
  if (values === undefined) return [{ field: 'what', message: `${whose} one of: ${names.join(', ')}.` }];
  return values.includes(says.is) ? [] : [{ field: 'is', message: `"${says.is}" is no value of ${says.finding}; allowed are ${values.join(', ')}.` }];
}

/** What the line names that is not there. */
function complaintsOfNames(line: ShopLine, knowledge: Knowledge): Complaint[] {
  const { says } = line;
  const owner = ownerOf(line, knowledge);
  if (owner.cause === undefined && owner.condition === undefined) {
    const ids = [...knowledge.causes, ...(says.kind === 'makes' || says.kind === 'moved' ? [] : knowledge.conditions)].map(({ id }) => id);
    return [{ field: 'of', message: `There is nothing called "${says.of}" that a line of this kind can speak of${nearest(ids, says.of)}` }];
  }
  if (says.kind === 'makes' && !knowledge.conditions.some(({ id }) => id === says.condition)) {
    return [{ field: 'what', message: `There is no condition called "${says.condition}"${nearest(knowledge.conditions.map(({ id }) => id), says.condition)}` }];
  }
  return complaintOfFinding(line, owner);
}

/** The rules of the knowledge that a line can break, said to the person who writes it. */
const SAID: Readonly<Record<string, { readonly field: LineField; readonly message: string }>> = {
  'every-reason-is-a-sentence': { field: 'because', message: 'Give the reason as a whole sentence: a capital letter first, a full stop last.' },
  'no-line-twice': { field: 'what', message: 'There is a line that says this already.' },
  'marks-leave-room': { field: 'strength', message: 'With this line its values of the same finding would add up to certainty. Take a weaker word.' },
  'strengths-are-used-alike': {
    field: 'strength',
    message: 'Take a weaker word: the graver of two states is never reached more readily than the milder, and only what was noted, the fuel or the plug can show the cause itself.',
  },
  'harmless-causes-do-no-harm': { field: 'what', message: 'This cause is harmless; it cannot make a fault or give a symptom.' },
};

const complaintOfBreach = ({ rule, problem }: Breach): Complaint => SAID[rule] ?? { field: 'of', message: `The line breaks the rule ${rule}: ${problem}.` };

const eachOnce = (complaints: readonly Complaint[]): Complaint[] =>
  complaints.filter(({ message }, i) => complaints.findIndex((other) => other.message === message) === i);

/** What the knowledge excepts from a rule it breaks before and after, so a line is held against the rules alone. */
const RULES = KNOWLEDGE_RULES.map((rule) => ({ ...rule, exceptions: [] }));

const known = new WeakMap<Knowledge, ReadonlySet<string>>();

/** What the rules say of the knowledge as it is; worked out once. */
const breachesOf = (knowledge: Knowledge): ReadonlySet<string> =>
  once(known, knowledge, () => new Set(lintKnowledge(knowledge, RULES).map((breach) => JSON.stringify(breach))));

/** What the rules say of the knowledge with these lines that they do not say of it without. Lines must name only what is there. */
function breachesBy(lines: readonly ShopLine[], knowledge: Knowledge): Breach[] {
  const before = breachesOf(knowledge);
  return lintKnowledge({ ...knowledge, ...taught(knowledge, lines) }, RULES).filter((breach) => !before.has(JSON.stringify(breach)));
}

const isBlank = (words: string): boolean => words.trim() === '';

/** Whether all lines can be taken together; quicker than to ask of each. */
export const allCanBeTaken = (lines: readonly ShopLine[], knowledge: Knowledge): boolean =>
  lines.every((line) => !isBlank(line.by) && complaintsOfNames(line, knowledge).length === 0) && breachesBy(lines, knowledge).length === 0;

/**
 * What is wrong with a line, held against the same rules as the knowledge itself.
 * @param knowledge with the lines that stand before this one, without the line itself
 * @returns one complaint a fault, empty when the line can be taken
 */
export function complaintsAbout(line: ShopLine, knowledge: Knowledge): Complaint[] {
  const nameless: Complaint[] = isBlank(line.by) ? [{ field: 'by', message: 'Say who says so.' }] : [];
  const reasonless: Complaint[] = isBlank(line.because) ? [{ field: 'because', message: 'Say why; a line without a reason is not taken.' }] : [];
  const names = complaintsOfNames(line, knowledge);
  if (names.length > 0) return [...names, ...reasonless, ...nameless];
  const broken = breachesBy([line], knowledge).map(complaintOfBreach);
  const ruled = reasonless.length > 0 ? broken.filter(({ field }) => field !== 'because') : broken;
  return [...eachOnce(ruled), ...reasonless, ...nameless];
}
