const folded = (text: string): string => text.normalize('NFD').replace(/\p{Diacritic}/gu, '').toLowerCase();

/** Whether every typed part begins a word of the name, in any order: 'mis lo' finds 'Misfire under load'. An empty search finds all. */
export function matches(name: string, typed: string): boolean {
  const words = folded(name).split(/[^\p{L}\p{N}]+/u);
  return folded(typed).split(/[^\p{L}\p{N}]+/u).filter((part) => part !== '').every((part) => words.some((word) => word.startsWith(part)));
}
