import type { CauseFinding, Findings, NextCheck, PlugFindings } from '../../shared/formats/findings.v1.ts';
import { inSentence, listWords } from '../domain/words.ts';
import type { Cause, Condition } from '../knowledge/types.ts';
import { worth } from './next-check.ts';

type Step = { readonly do: string; readonly because: string; readonly cylinder?: number };

export type PlanGrounds = {
  readonly stop: Findings['stop'];
  readonly plugs: readonly PlugFindings[];
  readonly engineCauses: readonly CauseFinding[];
  readonly engineChecks: readonly NextCheck[];
  readonly heat: Findings['heat'];
  readonly cause: (finding: CauseFinding) => Cause | undefined;
  /** The condition that a plug was judged by. */
  readonly condition: (plug: PlugFindings) => Condition | undefined;
};

/** Under this belief a cause is looked for before it is cured. */
const SURE = 0.8;
/** Above this a cause is worth a line in the plan, and so many lines at most. */
export const WORTH_A_CURE = 0.25;
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

/** The first check of every plug, of every cylinder that no plug tells of, and of the engine. */
function checkSteps(grounds: PlanGrounds): Step[] {
  const { plugs, engineChecks } = grounds;
  const open = leadingCauses(grounds).length === 0 && troubled(plugs).length === 0;
  const first = engineChecks.filter(({ cylinder }, i) => engineChecks.findIndex((other) => other.cylinder === cylinder) === i);
  const all = [...plugs.flatMap((p) => p.nextChecks.slice(0, 1)), ...(open ? engineChecks.slice(0, MOST_LOOKED_AT) : first)];
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

function plugSteps(grounds: PlanGrounds): Step[] {
  const by = new Map<Condition, PlugFindings[]>();
  for (const plug of troubled(grounds.plugs)) {
    const condition = grounds.condition(plug);
    if (condition !== undefined) by.set(condition, [...(by.get(condition) ?? []), plug]);
  }
  return [...by].map(([{ cure, meaning }, plugs]) => {
    const where = listWords(plugs.map((p) => (p.position === 'only' ? p.cylinder : `${p.cylinder} ${p.position}`)));
    const whole = plugs.length === grounds.plugs.length && plugs.length > 1;
    const which = whole ? 'All plugs' : plugs.length === 1 ? `The plug of cylinder ${where}` : `The plugs of cylinders ${where}`;
    return { do: `${which}: ${inSentence(cure)}`, because: meaning };
  });
}

function heatSteps({ heat }: PlanGrounds): Step[] {
  return heat.step === 0 ? [] : [{ do: `Then fit plugs ${heat.words}, no more.`, because: heat.why.join(' ') }];
}

/** What to do, in order: what stops the engine, what to look at, what to put right, the plugs, the heat value, and the next reading. */
export function planFor(grounds: PlanGrounds): Findings['plan'] {
  const needed = [...stopSteps(grounds.stop), ...checkSteps(grounds), ...cureSteps(grounds), ...plugSteps(grounds), ...heatSteps(grounds)];
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
