import { reportFailure } from './report-failure.ts';
import { buildAll } from './targets.ts';

await buildAll((text) => process.stdout.write(text)).catch(reportFailure);
