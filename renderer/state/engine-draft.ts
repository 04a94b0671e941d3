import { engine as engineFormat, type Engine } from '../../shared/formats/engine.ts';
import { problemsOf, type Problem } from '../../shared/formats/strict.ts';
import { err, ok, type Result } from '../../shared/result.ts';
import { pruned } from './prune.ts';

type Fields = { readonly [K in keyof Engine]?: Engine[K] | undefined };

/** An engine while it is being written down: what can be taken, and by its path the text of what cannot be taken yet. */
export type EngineDraft = { readonly fields: Fields; readonly raw: Readonly<Record<string, string>> };

export const emptyDraft: EngineDraft = { fields: {}, raw: {} };
export const draftOf = (engine: Engine): EngineDraft => ({ fields: engine, raw: {} });

function setAt(value: object, [first = '', ...rest]: readonly string[], part: unknown): object {
  const { [first]: inner } = value as Record<string, unknown>;
  const next = rest.length === 0 ? part : setAt(typeof inner === 'object' && inner !== null ? inner : {}, rest, part);
  return pruned({ ...value, [first]: next });
}

/** Sets the field at a dotted path, or takes it out; `raw` keeps a text that cannot be taken yet. */
export function withEntry(draft: EngineDraft, path: string, value: unknown, raw?: string): EngineDraft {
  const { [path]: _, ...others } = draft.raw;
  return { fields: setAt(draft.fields, path.split('.'), value), raw: raw === undefined ? others : { ...others, [path]: raw } };
}

const within = (groups: readonly (readonly number[])[] | undefined, cylinders: number): number[][] =>
  (groups ?? []).map((group) => group.filter((n) => n <= cylinders)).filter((group) => group.length > 0);

/** Another number of cylinders: groups lose the cylinders that are no longer there. A firing order stays as written, for the person to mend. */
export function withCylinders(draft: EngineDraft, cylinders: number | undefined, raw?: string): EngineDraft {
  const next = withEntry(draft, 'cylinders', cylinders, raw);
  if (cylinders === undefined) return next;
  const { fields } = next;
  const sets = (fields.ignition?.sets ?? []).map((set) => ({ ...set, plugs: set.plugs.filter((plug) => plug.cylinder <= cylinders) }));
  const trimmed: readonly (readonly [string, unknown])[] = [
    ['banks', within(fields.banks, cylinders)],
    ['adjacent', fields.adjacent?.filter(([a, b]) => a <= cylinders && b <= cylinders)],
    ['mixture.groups', within(fields.mixture?.groups, cylinders)],
    ['ignition.groups', within(fields.ignition?.groups, cylinders)],
    ['ignition.sets', sets.filter((set) => set.plugs.length > 0)],
  ];
  return trimmed.reduce((so, [path, value]) => withEntry(so, path, value), next);
}

/** `1-3-4-2`, `1, 3, 4, 2`; undefined when it is no list of numbers. */
export function readFiringOrder(text: string): number[] | undefined {
  return /^\s*\d+([\s,–-]+\d+)*\s*$/.test(text) ? text.trim().split(/[\s,–-]+/).map(Number) : undefined;
}

/** The engine as it would be saved, or what stands against it, place by place. */
export function checkedDraft({ fields, raw }: EngineDraft): Result<Engine, Problem[]> {
  const parsed = engineFormat.safeParse(fields);
  const untaken = Object.entries(raw).map(([path, text]) => ({ path, message: `"${text}" cannot be taken here` }));
  if (parsed.success && untaken.length === 0) return ok(parsed.data);
  const found = parsed.success ? [] : problemsOf(parsed.error).filter(({ path }) => raw[path] === undefined);
  return err([...untaken, ...found]);
}

/** Enough of the draft to draw it, or null while the number of cylinders is not known. Parts that do not fit together yet are left out. */
export function drawable({ fields }: EngineDraft): Engine | null {
  const { firingOrder: _, ...rest } = fields;
  const least = { use: fields.use ?? 'road', cylinders: fields.cylinders };
  for (const attempt of [{ ...fields, ...least }, { ...rest, ...least }, least]) {
    const parsed = engineFormat.safeParse(attempt);
    if (parsed.success) return parsed.data;
  }
  return null;
}
