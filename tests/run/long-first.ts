import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The files that hold the guards over thousands of sheets take minutes. They begin first, so that no core waits for the last of them. */
const LONG = /inference.guards-[\w-]+\.test\.ts$/;

export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return [...sorted.filter(({ moduleId }) => LONG.test(moduleId)), ...sorted.filter(({ moduleId }) => !LONG.test(moduleId))];
  }
}
