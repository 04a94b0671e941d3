import type { CauseFinding, Fact, Findings } from '../../../shared/formats/findings.v1.ts';

const causesIn = ({ plugs, engine }: Findings): readonly CauseFinding[] => [...plugs.flatMap(({ causes }) => causes), ...engine.causes];
const factsOf = ({ supports, speaksAgainst }: CauseFinding): readonly Fact[] => [...supports, ...speaksAgainst];

/** The lines that spoke in these findings, each with the greatest weight it had, in bits. */
export function spokenIn(findings: Findings | null): ReadonlyMap<string, number> {
  const spoken = new Map<string, number>();
  if (findings === null) return spoken;
  for (const { lines, bits } of causesIn(findings).flatMap(factsOf)) {
    for (const line of lines ?? []) if (Math.abs(bits) > Math.abs(spoken.get(line) ?? 0)) spoken.set(line, bits);
  }
  return spoken;
}

/** One cause with its facts, as it stands in the findings of one plug or of the engine. */
export type Spoken = { readonly cause: CauseFinding; readonly facts: readonly Fact[] };

/** Each cause once, the strongest belief first, with every fact that was told of it. */
export function spokenCauses(findings: Findings): readonly Spoken[] {
  const byId = new Map<string, CauseFinding>();
  for (const cause of causesIn(findings)) if (!byId.has(cause.id)) byId.set(cause.id, cause);
  return [...byId.values()].sort((a, b) => b.belief - a.belief).map((cause) => ({ cause, facts: factsOf(cause) }));
}
