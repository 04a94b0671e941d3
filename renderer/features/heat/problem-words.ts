import type { Text } from '../../text/index.ts';
import type { LegProblem } from './drive.ts';

/** What is wrong with the legs of a drive, in the page's words. */
export function problemWords(problem: LegProblem, { problems }: Text['heat']['drive']): string {
  switch (problem.kind) {
    case 'no line': return problems.noLine;
    case 'too many lines': return problems.tooMany(problem.lines, problem.most);
    case 'too long': return problems.tooLong(problem.seconds, problem.most);
    case 'cells': return problems.cells(problem.line, problem.cells);
    case 'value': return problems.value(problem.line, problem.column, problem.cell, problem.least, problem.most);
  }
}
