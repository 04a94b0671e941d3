import type { CylinderFindingName } from '../../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../../core/knowledge/index.ts';
import type { NextCheck } from '../../../shared/formats/findings.v1.ts';
import type { Use } from '../../../shared/vocabulary/engine.ts';
import type { Station } from '../../app/route.ts';

export type OutcomeField = { readonly station: Station; readonly field?: string };

const COLUMN: { readonly [F in CylinderFindingName]?: string } = {
  compression: 'compressionKPa', compressionWet: 'compressionWetKPa', leakDown: 'leakDownPercent', spark: 'spark', injector: 'injector',
  speedDropWhenCut: 'speedDropWhenCut', exhaustTemperature: 'egtC', borescope: 'borescope',
};

function cellFor(finding: CylinderFindingName, cylinder: number, use: Use): string {
  const column = finding === 'leakDown' && use === 'aircraft' ? 'differential' : COLUMN[finding];
  if (column !== undefined) return `${column}-${cylinder}`;
  const [how, part] = finding.split(' ');
  return `${how === 'swap' ? 'swap' : 'substitute'}-${part}-${cylinder}`;
}

/** Checks made on the plugs themselves; what they show is entered at the plug. */
export const AT_THE_PLUG: readonly string[] = ['plug-type', 'seat-and-torque-look', 'gap-measure', 'plug-resistance', 'plug-insulation'];

/** Where the outcome of a check is written down: its cell on the bench sheet, the plug, or the list of what was noticed. */
export function outcomeField(check: Pick<NextCheck, 'id' | 'cylinder'>, use: Use): OutcomeField {
  if (AT_THE_PLUG.includes(check.id)) return { station: 'plugs' };
  if (check.id === 'service-record') return { station: 'run', field: 'distanceKm' };
  const known = KNOWLEDGE.checks.find(({ id }) => id === check.id);
  if (known === undefined || !('finding' in known.tells)) return { station: 'run', field: 'noticed' };
  return { station: 'cylinders', field: cellFor(known.tells.finding, check.cylinder ?? 1, use) };
}
