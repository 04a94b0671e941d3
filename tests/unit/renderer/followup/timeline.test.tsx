import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { Timeline } from '../../../../renderer/features/followup/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { radialReading } from '../../../fixtures/radial-eighteen.ts';
import { freshPage } from '../support/page.ts';
import { engineWithReading, findingsOf, sheetWith, tan } from './two-readings.ts';

const keepSecond = async (): Promise<string> => {
  const { host, engineId, id } = await engineWithReading({}, tan);
  const sheet = { ...host.readings.get(id)!.sheet, title: 'New guides' };
  const done = { ...sheet, since: { ...sheet.since!, done: [{ cause: 'guides-worn', cylinders: [3] }] } };
  host.readings.set(id, { ...host.readings.get(id)!, state: 'kept', sheet: done, findings: findingsOf(done) });
  return engineId;
};

describe('the plugs of an engine over the years', () => {
  it('stand in a table: a column a reading, a row a plug, with what became of each', async () => {
    render(<Timeline id={await keepSecond()} />);
    const table = await screen.findByRole('table');
    expect(within(table).getAllByRole('columnheader').map(({ textContent }) => textContent)).toEqual([
      'Plug', '14 February 2026Blue smoke', expect.stringMatching(/^14 March 2026New guidesPut rightValve guide.*, cylinder 3 ?Borne out$/),
    ]);
    const third = within(table).getByRole('row', { name: /^Cylinder 3/ });
    expect(within(third).getAllByRole('cell').map(({ textContent }) => textContent)).toEqual(['Oil fouling', 'NormalCured']);
    const first = within(table).getByRole('row', { name: /^Cylinder 1/ });
    expect(within(first).getAllByRole('cell').map(({ textContent }) => textContent)).toEqual(['Normal', 'Normal']);
  });

  it('lead from each column to the findings of that reading, and scroll by keyboard', async () => {
    render(<Timeline id={await keepSecond()} />);
    expect((await screen.findByRole('link', { name: /14 February 2026/ })).getAttribute('href')).toMatch(/^#\/reading\/.+\/findings$/);
    expect(screen.getByRole('region', { name: 'The plugs from reading to reading' }).tabIndex).toBe(0);
  });

  it('say what is missing while there are fewer than two', async () => {
    const { engineId } = await engineWithReading();
    render(<Timeline id={engineId} />);
    expect(await screen.findByText(/Two kept readings are needed/)).toBeTruthy();
  });

  it('of a large engine show those that were ever at fault, and all when asked', async () => {
    const host = freshPage();
    const saved = await useStore.getState().saveEngine(null, radialReading.engine);
    if (!saved.ok) throw new Error('the engine was not saved');
    const findings = findingsOf(radialReading);
    for (const [id, date] of [['a', '2024-05-03'], ['b', '2025-05-10']] as const) {
      host.readings.set(id, { id, engineId: saved.value.id, state: 'kept', revision: 1, changedAt: '', sheet: { ...radialReading, date }, pending: {}, findings });
    }
    render(<Timeline id={saved.value.id} />);
    const faulty = findings.plugs.filter(({ verdict, also }) => also.length > 0 || (verdict !== 'normal' && verdict !== 'undetermined')).length;
    expect((await screen.findAllByRole('rowheader')).length).toBe(faulty);
    expect(screen.getByText(`${36 - faulty} plugs were never at fault and are not shown.`)).toBeTruthy();
    await userEvent.click(screen.getByRole('radio', { name: 'All plugs' }));
    expect(screen.getAllByRole('rowheader')).toHaveLength(36);
  });

  it('are not asked of an engine that is not there', () => {
    freshPage();
    render(<Timeline id="nowhere" />);
    expect(screen.getByText('There is nothing at this address.')).toBeTruthy();
    expect(sheetWith(tan).plugs).toHaveLength(4);
  });
});
