import type { KnowledgeRule } from './rule.ts';

const twice = (values: readonly string[]): string[] => [...new Set(values.filter((value, i) => values.indexOf(value) !== i))];

export const noLineTwice: KnowledgeRule = {
  name: 'no-line-twice',
  check: (kb, report) => {
    for (const { id, shows, gives } of [...kb.conditions, ...kb.causes]) {
      for (const value of twice(shows.map(({ finding, is }) => `${finding} ${is}`))) report(id, `shows ${value} twice`);
      for (const value of twice(gives.map(({ symptom }) => symptom))) report(id, `gives ${value} twice`);
    }
    for (const { id, makes, moved, checks, synonyms } of kb.causes) {
      for (const value of twice(makes.map(({ condition }) => condition))) report(id, `makes ${value} twice`);
      for (const value of twice(moved.flatMap(({ by }) => Object.entries(by).flatMap(([key, values]) => [values].flat().map((v) => `${key} ${String(v)}`))))) report(id, `is moved by ${value} twice`);
      for (const value of twice([...checks, ...synonyms])) report(id, `names ${value} twice`);
    }
  },
  exceptions: [],
};
