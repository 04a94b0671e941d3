import type { CureFollowed, FollowUp, PlugChange } from '../../shared/formats/findings.v1.ts';
import { cylindersIn, percent, wrapped } from './lines.ts';

const sound = ({ change, before, now }: PlugChange): boolean => change === 'unchanged' && before === 'normal' && now === 'normal';

const plugLine = ({ cylinder, position, change, why }: PlugChange): string =>
  wrapped(`${change}. ${why}`, `  cylinder ${cylinder}${position === 'only' ? '' : ` ${position}`}: `);

function cureLines({ name, cylinders, outcome, beliefBefore, beliefNow, why }: CureFollowed): string[] {
  const where = cylinders.length === 0 ? '' : `, ${cylindersIn(cylinders)}`;
  const belief = `belief ${percent(beliefBefore)} then, ${percent(beliefNow)} now`;
  return [wrapped(`${outcome} (${belief}). ${outcome === 'not done' ? '' : why}`, `  ${name}${where}: `)];
}

/** This reading against the one before it: what changed, what became of the cures, and what limits the comparison. Plugs that stayed sound are not listed. */
export function followUpLines({ before, summary, plugs, symptoms, cures, heat, doubts }: FollowUp): string[] {
  const since = before.date?.slice(0, 10) ?? before.title;
  return [
    `Since the reading ${since === undefined ? 'before' : `of ${since}`}`,
    wrapped(summary, '  '),
    ...plugs.filter((plug) => !sound(plug)).map(plugLine),
    ...symptoms.map(({ what, change }) => wrapped(change, `  ${what}: `)),
    ...cures.flatMap(cureLines),
    ...(heat === undefined ? [] : [wrapped(heat, '  ')]),
    ...doubts.map((line) => wrapped(line, '  doubt: ')),
  ];
}
