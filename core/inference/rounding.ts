import type { CauseFinding, Findings, FollowUp, PlugFindings } from '../../shared/formats/findings.v1.ts';

/** Beliefs are summed in full and rounded once, here at the border, to four places. */
const four = (p: number): number => Math.round(Math.min(1, Math.max(0, p)) * 1e4) / 1e4;

const cause = (c: CauseFinding): CauseFinding => ({ ...c, belief: four(c.belief) });

function thermal({ tooCold, tooHot }: PlugFindings['thermal']): PlugFindings['thermal'] {
  const [cold, hot] = [four(tooCold), four(tooHot)];
  return { tooCold: cold, inWindow: four(1 - cold - hot), tooHot: hot };
}

/** What is believed of a plug, at the border. */
export const roundedPlug = <P extends Pick<PlugFindings, 'belief' | 'thermal'>>(plug: P): P => ({ ...plug, belief: four(plug.belief), thermal: thermal(plug.thermal) });

const followed = (followUp: FollowUp): FollowUp => ({
  ...followUp,
  cures: followUp.cures.map((cure) => ({ ...cure, beliefBefore: four(cure.beliefBefore), beliefNow: four(cure.beliefNow) })),
});

export const rounded = (findings: Findings): Findings => ({
  ...findings,
  ...(findings.followUp !== undefined && { followUp: followed(findings.followUp) }),
  plugs: findings.plugs.map((plug) => ({ ...roundedPlug(plug), causes: plug.causes.map(cause) })),
  engine: { ...findings.engine, causes: findings.engine.causes.map(cause) },
  heat: { ...findings.heat, belief: four(findings.heat.belief) },
});
