import type { Engine } from '../../shared/formats/engine.ts';
import type { PlugKey } from '../domain/plugs.ts';
import { endsAndMiddle } from '../domain/rows.ts';
import type { SharingGroup } from '../domain/sharing.ts';
import { listWords } from '../domain/words.ts';
import type { CauseScope } from '../knowledge/types.ts';
import type { CylinderEvidence, Evidence } from './evidence.ts';

/** A place where a cause can act, with the cylinders and plugs that it reaches. `group`: its name, or empty. */
export type Site = { readonly group: string; readonly cylinders: readonly number[]; readonly plugs: readonly PlugKey[] };

const keysOf = (cylinders: readonly CylinderEvidence[]): PlugKey[] => cylinders.flatMap((c) => c.plugs.map((plug) => plug.key));

const plugsOf = (cylinders: readonly CylinderEvidence[], numbers: readonly number[]): PlugKey[] =>
  keysOf(cylinders.filter((c) => numbers.includes(c.cylinder)));

/** Of an ignition set its own plugs; of any other group all that stand in its cylinders, also one that was read as `unknown` of two. */
function groupSites(kind: SharingGroup['kind'], groups: readonly SharingGroup[], cylinders: readonly CylinderEvidence[]): Site[] {
  return groups
    .filter((group) => group.kind === kind)
    .map((group) => ({
      group: group.name,
      cylinders: [...group.cylinders].sort((a, b) => a - b),
      plugs: kind === 'ignition set' ? group.plugs : plugsOf(cylinders, group.cylinders),
    }));
}

/** A group that is the whole engine adds nothing to the engine's own causes. */
const isPart =
  (cylinders: readonly CylinderEvidence[]) =>
  (site: Site): boolean =>
    site.cylinders.length < cylinders.length || cylinders.length === 1 || site.plugs.length < plugsOf(cylinders, site.cylinders).length;

/** Where a road engine's ignition is not recorded each cylinder may well have a coil of its own; other engines mostly have one for several. Common practice. */
const mayHaveOwnCoils = ({ ignition, use }: Engine): boolean => ignition === undefined && (use === 'road' || use === 'competition');

/** Ends against middle show only where one body feeds a whole row. */
function placesInTheRow(scope: 'ends' | 'middle', { cylinders, sheet }: Pick<Evidence, 'cylinders' | 'sheet'>): Site[] {
  const among = [...endsAndMiddle(sheet.engine)[scope]].sort((a, b) => a - b);
  return among.length < 2 ? [] : [{ group: `${scope === 'ends' ? 'end' : 'middle'} cylinders ${listWords(among)}`, cylinders: among, plugs: plugsOf(cylinders, among) }];
}

/** All plugs at the bottom of their cylinders. */
function lowerPlugs(cylinders: readonly CylinderEvidence[]): Site[] {
  const bearers = cylinders.map(({ cylinder, plugs }) => ({ cylinder, plugs: plugs.filter(({ place }) => place.position === 'lower') })).filter(({ plugs }) => plugs.length > 0);
  return bearers.length === 0 ? [] : [{ group: 'lower plugs', cylinders: bearers.map(({ cylinder }) => cylinder), plugs: bearers.flatMap(({ plugs }) => plugs.map(({ key }) => key)) }];
}

/** Every place where a cause of this scope can act in this engine. */
export function sitesFor(scope: CauseScope, groups: readonly SharingGroup[], { cylinders, sheet }: Evidence): Site[] {
  const all = cylinders.map((c) => c.cylinder);
  const each = (): Site[] => cylinders.map((c) => ({ group: '', cylinders: [c.cylinder], plugs: keysOf([c]) }));
  switch (scope) {
    case 'engine':
      return [{ group: '', cylinders: all, plugs: keysOf(cylinders) }];
    case 'cylinder':
      return each();
    case 'plug':
      return cylinders.flatMap((c) => c.plugs.map((plug) => ({ group: '', cylinders: [c.cylinder], plugs: [plug.key] })));
    case 'ends':
    case 'middle':
      return placesInTheRow(scope, { cylinders, sheet });
    case 'lower plugs':
      return lowerPlugs(cylinders);
    default:
      return scope === 'coil' && mayHaveOwnCoils(sheet.engine) ? each() : groupSites(scope, groups, cylinders).filter(isPart(cylinders));
  }
}

