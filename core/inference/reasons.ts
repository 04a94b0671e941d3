import type { Fact } from '../../shared/formats/findings.v1.ts';
import { givesKey, makesKey, showsKey } from '../knowledge/line-keys.ts';
import type { Cause, Condition } from '../knowledge/types.ts';
import { strengthOf } from './network.ts';
import type { Said } from './pieces.ts';

/** `lines`: what leads from the cause to the finding, by the keys of the knowledge's lines. */
type Link = {
  readonly finding?: string;
  readonly symptom?: string;
  readonly is?: string;
  readonly because: string;
  readonly lines: readonly string[];
  readonly by: readonly string[];
};

type Owner = Pick<Condition, 'id' | 'gives'> & { readonly shows: readonly (Cause['shows'][number] | Condition['shows'][number])[] };

const added = ({ addedBy }: { readonly addedBy?: string }): readonly string[] => (addedBy === undefined ? [] : [addedBy]);

const ownLinks = ({ id, shows, gives }: Owner): Link[] => [
  ...shows.map((link) => ({ ...link, lines: [showsKey(id, link)], by: added(link) })),
  ...gives.map((link) => ({ ...link, lines: [givesKey(id, link)], by: added(link) })),
];

/** Every line that leads from the cause to something seen, its own first, then those over the conditions it makes, the strongest first. */
export function linksOf(cause: Cause, conditions: readonly Condition[]): Link[] {
  const made = [...cause.makes].sort((a, b) => strengthOf(b) - strengthOf(a)).flatMap((link) => {
    const condition = conditions.filter(({ id }) => id === link.condition);
    return condition.flatMap(ownLinks).map((own) => ({ ...own, lines: [makesKey(cause.id, link), ...own.lines], by: [...added(link), ...own.by] }));
  });
  return [...ownLinks(cause), ...made];
}

type Reason = Pick<Fact, 'because' | 'lines' | 'addedBy'>;

/** @param link the line that the reason rests on */
const restingOn = ({ lines, by }: Link, because: string): Reason => ({ because, lines: [...lines], ...(by.length > 0 && { addedBy: [...new Set(by)].join(', ') }) });

function reasonFor(all: readonly Link[], { finding, value }: Said, supports: boolean): Reason {
  const links = all.filter((link) => link.finding === finding || (finding === 'symptom' && link.symptom === value));
  const same = links.find((link) => link.symptom === value || link.is === value);
  if (supports) return same === undefined ? { because: 'It speaks more against the rival causes than against this one.' } : restingOn(same, same.because);
  if (same !== undefined) return restingOn(same, 'A rival cause explains it better.');
  const expected = links[0];
  return expected?.is === undefined
    ? { because: 'Other causes explain it better.' }
    : restingOn(expected, `With this cause one would rather see "${expected.is}". ${expected.because}`);
}

/** Why a piece speaks for the cause or against it; of several findings taken together, in the words of the first that has a line of its own. */
export function reason(links: readonly Link[], said: readonly Said[], supports: boolean): Reason {
  const all = said.map((one) => reasonFor(links, one, supports));
  return all.find(({ lines }) => lines !== undefined) ?? (all[0] as Reason);
}
