import { join } from 'node:path';
import { build, type Arch, type Platform } from 'electron-builder';
import { ROOT } from '../start/targets.ts';
import { packageConfig, type PackageGiven } from './config.ts';
import { drawIcons } from './icons.ts';

/** The mark the page shows in its tab; the program on the desktop has the same. */
export const MARK = join(ROOT, 'renderer/app/mark.svg');

export type PackGiven = Omit<PackageGiven, 'icons'> & { readonly platform: Platform };

/**
 * Packs the built program.
 * @param form 'dir': a folder to start it from; 'default': the installers of the platform
 * @param arch of the machine the program is for; without it, of this one
 * @returns the files made
 */
export async function pack({ platform, ...given }: PackGiven, form: 'dir' | 'default', arch?: Arch): Promise<readonly string[]> {
  const icons = join(given.output, 'icons');
  await drawIcons(MARK, icons);
  const targets = platform.createTarget(form === 'dir' ? 'dir' : undefined, ...(arch === undefined ? [] : [arch]));
  return build({ projectDir: ROOT, config: packageConfig({ ...given, icons }), targets, publish: 'never' });
}
