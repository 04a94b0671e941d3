import type { LegProblem } from '../../../core/thermal/drive-log.ts';
import type { Text } from '../../text/index.ts';

/** What is wrong with the legs of a drive or with a log, in the page's words. */
export function problemWords(problem: LegProblem, { problems }: Text['heat']['drive']): string {
  switch (problem.kind) {
    case 'no line': return problems.noLine;
    case 'one sample': return problems.oneSample;
    case 'too many lines': return problems.tooMany(problem.lines, problem.most);
    case 'too long': return problems.tooLong(problem.seconds, problem.most);
    case 'cells': return problems.cells(problem.line, problem.cells, problem.first);
    case 'time back': return problems.back(problem.line, problem.time, problem.before);
    case 'value': return problems.value(problem.line, problem.column, problem.cell, problem.least, problem.most, problem.whole);
  }
}

const MOST_TOLD = 5;

/** The first few problems, and how many more there are. */
export function someProblems(all: readonly LegProblem[], drive: Text['heat']['drive']): readonly string[] {
  const told = all.slice(0, MOST_TOLD).map((problem) => problemWords(problem, drive));
  return all.length > MOST_TOLD ? [...told, drive.problems.more(all.length - MOST_TOLD)] : told;
}
