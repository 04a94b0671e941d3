import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { FindingsStation } from '../../../../renderer/features/findings/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Cure } from '../../../../shared/formats/reading-sheet.v1.ts';
import { currentSheet, engineWithReading, oily, tan } from './two-readings.ts';

async function show(third: typeof tan, done?: readonly Cure[]): Promise<HTMLElement> {
  await engineWithReading({}, third);
  for (const cure of done ?? []) useStore.getState().act({ type: 'cure', cure, on: true });
  render(<FindingsStation />);
  return (await screen.findByRole('heading', { name: 'Since the reading of 14 February 2026' })).closest('section')!;
}
const guides: Cure = { cause: 'guides-worn', cylinders: [3] };

describe('what became of the reading before, in the findings', () => {
  it('says in one sentence that the plug is cured, and that the cure is borne out', async () => {
    const part = await show(tan, [guides]);
    expect(within(part).getByText('Cylinder 3 is cured; three plugs are sound as before.')).toBeTruthy();
    const rows = within(part).getAllByRole('listitem').map(({ textContent }) => textContent);
    expect(rows[0]).toMatch(/^CuredCylinder 3\. Oil fouling .*before, normal now/);
    expect(rows[1]).toMatch(/^Borne outValve guide.*cylinder 3 belief \d+ % then, under 1 % now/);
  });

  it('says that a plug is as it was and the cure not borne out', async () => {
    const part = await show(oily, [guides]);
    expect(within(part).getByText('Unchanged')).toBeTruthy();
    expect(within(part).getByText('Not borne out')).toBeTruthy();
  });

  it('leads to where the cures are ticked when none is', async () => {
    const part = await show(oily);
    expect(within(part).getByRole('link', { name: 'Note what was put right' }).getAttribute('href')).toMatch(/\/run\/since$/);
  });

  it('leaves out what nobody did and nobody needs any more', async () => {
    const part = await show(tan, [guides]);
    expect(within(part).queryByText('Not done')).toBeNull();
  });

  it('keeps the limits of the comparison at hand', async () => {
    const part = await show(tan, [guides]);
    await userEvent.click(within(part).getByRole('button', { name: /More about the comparison/ }));
    expect(within(part).getByText(/neither|not noted as cleaned or renewed/)).toBeTruthy();
    expect(currentSheet().since?.done).toEqual([guides]);
  });
});
