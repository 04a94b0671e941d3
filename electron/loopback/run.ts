import { fileURLToPath } from 'node:url';
import { forkedPhotoProcess, type PhotoProcess } from '../node/photo/photo-process.ts';
import { openProgram, type Program } from '../node/program.ts';
import { serveLoopback, type Loopback } from './server.ts';

const SEEDS = fileURLToPath(new URL('../../seeds', import.meta.url));
const WORKER = new URL('../node/photo/worker.ts', import.meta.url);

export type LoopbackRun = { readonly program: Program; readonly served: Loopback; readonly close: () => Promise<void> };
export type LoopbackOptions = { readonly version: string; readonly folder: string; readonly demo: boolean; readonly page: string; readonly port: number };

/**
 * Opens the program and serves it on this machine.
 * @throws when the port is taken; the library is closed again then.
 */
export async function runLoopback({ version, folder, demo, page, port }: LoopbackOptions, log: (line: string) => void): Promise<LoopbackRun> {
  const startPhotoProcess = (): PhotoProcess => forkedPhotoProcess(WORKER);
  const program = await openProgram({ host: 'loopback', version, folder, kind: demo ? 'demo' : 'own', log, seeds: SEEDS, startPhotoProcess });
  try {
    const served = await serveLoopback({ door: program.door, photos: program.photos, page, port });
    return { program, served, close: async () => { await served.close(); await program.close(); } };
  } catch (error) {
    await program.close();
    throw error;
  }
}
