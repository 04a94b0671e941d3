import type { Cause } from '../knowledge/types.ts';
import type { World } from './next-check.ts';
import type { Instance } from './network.ts';

const isLocal = ({ cylinders }: Instance): boolean => cylinders.length === 1;
const keyOf = (causes: readonly Instance[]): string => causes.map(({ id }) => id).join('|');

/**
 * The worlds of the whole engine, from those of its cylinders. Of the causes of one cylinder only those that answer are told apart, and such faults on two
 * cylinders at once are left out: where one of them explains what is asked about, a second is hardly ever needed.
 * @param list the worlds of every cylinder; of those that stand and look alike the same ones, so that a cause at one of them stands for all
 */
export function engineWorlds(list: readonly (readonly World[])[], answers: (cause: Cause) => boolean): World[] {
  const [shared, local] = [new Map<string, { causes: readonly Instance[]; probability: number }>(), new Map<string, World>()];
  list.forEach((worlds, c) => {
    for (const { causes, probability } of worlds) {
      const own = causes.filter((one) => isLocal(one) && answers(one.cause));
      const rest = causes.filter((one) => !isLocal(one));
      const key = keyOf(rest);
      const left = shared.get(key) ?? { causes: rest, probability: 0 };
      if (c === 0) left.probability += probability;
      if (own.length > 0) {
        const all = [...rest, ...own];
        local.set(keyOf(all), { causes: all, probability: (local.get(keyOf(all))?.probability ?? 0) + probability });
        left.probability -= probability;
      }
      shared.set(key, left);
    }
  });
  const worlds = [...shared.values(), ...local.values()].filter(({ probability }) => probability > 0);
  const all = worlds.reduce((sum, { probability }) => sum + probability, 0);
  return worlds.map((world) => ({ ...world, probability: world.probability / all }));
}
