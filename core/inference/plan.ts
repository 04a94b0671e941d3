import type { CauseFinding, Findings, NextCheck, PlugFindings } from '../../shared/formats/findings.v1.ts';
import { inSentence, listWords } from '../domain/words.ts';
import type { Cause, Condition, Contradiction } from '../knowledge/types.ts';
import type { Look } from './engine-findings.ts';
import { worth, WORTH_A_CURE } from './next-check.ts';

type Step = { readonly do: string; readonly because: string; readonly cylinder?: number };

export type PlanGrounds = {
  readonly stop: Findings['stop'];
  readonly plugs: readonly PlugFindings[];
  readonly engineCauses: readonly CauseFinding[];
  readonly engineChecks: readonly NextCheck[];
  /** What the likeliest causes of a complaint send to. */
  readonly firstLooks: readonly Look[];
  readonly heat: Findings['heat'];
  readonly cause: (finding: CauseFinding) => Cause | undefined;
  /** The condition that a plug was judged by. */
  readonly condition: (plug: PlugFindings) => Condition | undefined;
  /** What of this plug wants looking at again. */
  readonly secondLooks: (plug: PlugFindings) => readonly Contradiction[];
};

/** Under this belief a cause is looked for before it is cured, and a plug looked at again. */
const SURE = 0.8;
/** So many cures stand in a plan at most. */
export const MOST_CURES = 5;

const troubled = (plugs: readonly PlugFindings[]): PlugFindings[] => plugs.filter((p) => p.verdict !== 'normal' && p.verdict !== 'undetermined');

function stopSteps(stop: Findings['stop']): Step[] {
  const [only, ...more] = stop;
  if (only === undefined) return [];
  const cylinder = more.every((other) => other.cylinder === only.cylinder) ? only.cylinder : undefined;
  return [
    {
      do: 'Do not run the engine until this is cleared.',
      because: stop.map(({ why }) => why).join(' '),
      ...(cylinder === undefined ? {} : { cylinder }),
    },
  ];
}

const percent = (p: number): string => `${Math.round(100 * p)} %`;

/** Where no plug is at fault and no cause is worth a cure, so many checks are the plan. */
const MOST_LOOKED_AT = 3;

/**
 * The first check of every plug, of every cylinder that no plug tells of, and of the engine. Where none decides anything and no cause is worth a cure, the
 * likeliest causes of the complaint say themselves where to look.
 */
function checkSteps(grounds: PlanGrounds): Step[] {
  const { plugs, engineChecks, firstLooks } = grounds;
  const open = leadingCauses(grounds).length === 0 && troubled(plugs).length === 0;
  const first = engineChecks.filter(({ cylinder }, i) => engineChecks.findIndex((other) => other.cylinder === cylinder) === i);
  const all = [...plugs.flatMap((p) => p.nextChecks.slice(0, 1)), ...(open ? engineChecks.slice(0, MOST_LOOKED_AT) : first)];
  if (open && all.length === 0)
    return firstLooks.slice(0, MOST_LOOKED_AT).map(({ check, cause }) => ({ do: check.name, because: `${check.how} It looks for: ${inSentence(cause.name)}.` }));
  return all
    .filter((check, i) => all.findIndex((other) => other.id === check.id) === i)
    .sort((a, b) => worth(b) - worth(a) || (a.id < b.id ? -1 : 1))
    .map((check) => ({ do: check.name, because: check.why, ...(check.cylinder === undefined ? {} : { cylinder: check.cylinder }) }));
}

/** Causes by belief, each once, those of the whole engine before those of one cylinder at like belief. */
function leadingCauses({ plugs, engineCauses }: PlanGrounds): CauseFinding[] {
  const all = [...engineCauses, ...plugs.flatMap((p) => p.causes)];
  const once = all.filter((c, i) => all.findIndex((other) => other.id === c.id) === i && c.belief >= WORTH_A_CURE);
  return once.sort((a, b) => b.belief - a.belief || (a.id < b.id ? -1 : 1)).slice(0, MOST_CURES);
}

function cureSteps(grounds: PlanGrounds): Step[] {
  return leadingCauses(grounds).flatMap((finding): Step[] => {
    const cause = grounds.cause(finding);
    if (cause === undefined || cause.harmless) return [];
    const [cylinder] = finding.cylinders.length === 1 ? finding.cylinders : [];
    const found = finding.belief >= SURE ? '' : 'If the checks bear it out: ';
    return [
      {
        do: found === '' ? cause.cure : `${found}${inSentence(cause.cure)}`,
        because: `${finding.name}: belief ${percent(finding.belief)}.`,
        ...(cylinder === undefined ? {} : { cylinder }),
      },
    ];
  });
}

/** What is said of several plugs is one step. */
function stepsOnPlugs<T>(grounds: PlanGrounds, of: (plug: PlugFindings) => readonly T[], step: (said: T) => Step): Step[] {
  const by = new Map<T, PlugFindings[]>();
  for (const plug of grounds.plugs) for (const said of of(plug)) by.set(said, [...(by.get(said) ?? []), plug]);
  return [...by].map(([said, plugs]) => {
    const where = listWords(plugs.map((p) => (p.position === 'only' ? p.cylinder : `${p.cylinder} ${p.position}`)));
    const whole = plugs.length === grounds.plugs.length && plugs.length > 1;
    const which = whole ? 'All plugs' : plugs.length === 1 ? `The plug of cylinder ${where}` : `The plugs of cylinders ${where}`;
    const { do: what, because } = step(said);
    return { do: `${which}: ${inSentence(what)}`, because };
  });
}

/** The plugs lie on the bench: what no sure judgement accounts for is looked at again before anything is measured on the engine. */
function lookSteps(grounds: PlanGrounds): Step[] {
  const sure = troubled(grounds.plugs).filter(({ belief }) => belief >= SURE);
  return stepsOnPlugs(grounds, (plug) => (sure.includes(plug) ? [] : grounds.secondLooks(plug)), ({ words, because }) => ({ do: words, because }));
}

function plugSteps(grounds: PlanGrounds): Step[] {
  const faulty = troubled(grounds.plugs);
  const conditions = (plug: PlugFindings): readonly Condition[] => (faulty.includes(plug) ? [grounds.condition(plug) ?? []].flat() : []);
  return stepsOnPlugs(grounds, conditions, ({ cure, meaning }) => ({ do: cure, because: meaning }));
}

function heatSteps({ heat }: PlanGrounds): Step[] {
  return heat.step === 0 ? [] : [{ do: `Then fit plugs ${heat.words}, no more.`, because: heat.why.join(' ') }];
}

/** What to do, in order: what stops the engine, plugs to look at again, checks, what to put right, the plugs, the heat value, the next reading. */
export function planFor(grounds: PlanGrounds): Findings['plan'] {
  const { stop } = grounds;
  const needed = [...stopSteps(stop), ...lookSteps(grounds), ...checkSteps(grounds), ...cureSteps(grounds), ...plugSteps(grounds), ...heatSteps(grounds)];
  const last: Step[] =
    needed.length === 0
      ? []
      : [
          {
            do: 'Read the plugs again after the same kind of running and compare.',
            because: 'Only the next reading shows whether the cure was the right one.',
          },
        ];
  return [...needed, ...last].slice(0, 20).map((step, i) => ({ order: i + 1, ...step }));
}
