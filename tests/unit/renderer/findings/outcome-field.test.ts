import { describe, expect, it } from 'vitest';
import { CYLINDER_FINDINGS } from '../../../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { cellName, COLUMNS } from '../../../../renderer/features/checks/columns.ts';
import { AT_THE_PLUG, outcomeField } from '../../../../renderer/features/findings/outcome-field.ts';

const trials = Object.keys(CYLINDER_FINDINGS).filter((name) => /^(swap|known-good) /.test(name)).map((name) => name.replace('known-good ', 'substitute-').replace('swap ', 'swap-'));
const places = [...COLUMNS.map((column) => cellName(column, 3)), ...trials.map((trial) => `${trial}-3`)];

describe('the outcome of a check', () => {
  it.each(KNOWLEDGE.checks.map(({ id }) => id))('of "%s" has a field to be written into', (id) => {
    const { station, field } = outcomeField({ id, cylinder: 3 }, 'road');
    if (station === 'cylinders') expect(places).toContain(field);
    else if (station === 'run') expect(['noticed', 'distanceKm']).toContain(field);
    else expect(station).toBe('plugs');
  });
  it('of a leak-down test on an aircraft goes into the differential (FAA AC 43.13-1B tests at two gauges)', () => {
    expect(outcomeField({ id: 'leak-down-test', cylinder: 2 }, 'aircraft')).toEqual({ station: 'cylinders', field: 'differential-2' });
  });
  it('made on the plug itself is known by checks that exist', () => {
    expect(KNOWLEDGE.checks.map(({ id }) => id)).toEqual(expect.arrayContaining([...AT_THE_PLUG]));
  });
});
