import { driveAnswer, type DriveQuestion } from '../../../core/heat/drive-answer.ts';

/** Computes drives beside the page, so that the page stays fluid. One question in, one answer out, with the number of the question. */
addEventListener('message', ({ data }: MessageEvent<{ readonly number: number; readonly question: DriveQuestion }>) => {
  postMessage({ number: data.number, answer: driveAnswer(data.question) });
});
