/** Cylinders or plugs, by their keys, that share a part. */
export type Group = { readonly name?: string; readonly members: readonly string[] };

export const letterOf = (group: number): string => String.fromCharCode(65 + (group % 26));

export const withoutEmpty = (groups: readonly Group[]): readonly Group[] => groups.filter((group) => group.members.length > 0);

/** Puts a member into a group, out of the one it was in; if it was in that group already, it is in none afterwards. */
export function movedInto(groups: readonly Group[], into: number, key: string): readonly Group[] {
  const wasThere = groups[into]?.members.includes(key) ?? false;
  return groups.map((group, i) => {
    const others = group.members.filter((member) => member !== key);
    return { ...group, members: i === into && !wasThere ? [...others, key].sort(inKeyOrder) : others };
  });
}

const inKeyOrder = (a: string, b: string): number => Number.parseInt(a, 10) - Number.parseInt(b, 10) || (a < b ? -1 : 1);

export const fromNumbers = (groups: readonly (readonly number[])[] | undefined): readonly Group[] =>
  (groups ?? []).map((group) => ({ members: group.map(String) }));
export const toNumbers = (groups: readonly Group[]): number[][] => groups.map((group) => group.members.map(Number));
