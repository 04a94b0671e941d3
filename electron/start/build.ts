import { buildWhatIsStale, TARGET_NAMES } from './targets.ts';
import { reportFailure } from './report-failure.ts';

await buildWhatIsStale(TARGET_NAMES, (text) => process.stdout.write(text)).catch(reportFailure);
