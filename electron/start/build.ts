import { buildAll } from './targets.ts';

await buildAll((line) => process.stdout.write(line));
