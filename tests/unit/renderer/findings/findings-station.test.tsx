import { render, screen } from '@testing-library/react';
import { beforeEach, describe, expect, it } from 'vitest';
import { FindingsStation } from '../../../../renderer/features/findings/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { oilyThird, oilyThirdSheet } from '../../../fixtures/told-findings.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const openWith = async (findings: typeof oilyThird | null): Promise<void> => {
  await openReadingOf(oilyThirdSheet.engine);
  const { reading, showReading } = useStore.getState();
  showReading({ id: reading!.id, engineId: reading!.engineId, state: 'draft', revision: 1, changedAt: '', sheet: oilyThirdSheet, pending: {}, findings });
};

describe('the findings of a reading', () => {
  let host: ReturnType<typeof freshPage>;
  beforeEach(() => { host = freshPage(); });

  it('with nothing seen yet teach where to begin', async () => {
    const id = await openReadingOf({ use: 'road', cylinders: 4 });
    render(<FindingsStation />);
    expect(screen.getByRole('heading', { name: 'Nothing to judge yet' })).toBeTruthy();
    expect(screen.getByRole('link', { name: 'To the plugs' }).getAttribute('href')).toBe(`#/reading/${id}/plugs`);
  });

  it('lead each next check to its own field', async () => {
    const known = { ...oilyThird, plugs: oilyThird.plugs.map((plug) => ({ ...plug, nextChecks: plug.nextChecks.filter(({ id }) => id === 'borescope') })) };
    await openWith(known);
    render(<FindingsStation />);
    expect(screen.getByRole('link', { name: 'Write down the result: Borescope, cylinder 3' }).getAttribute('href')).toMatch(/^#\/reading\/.+\/cylinders\/borescope-3$/);
  });

  it('say so when they could not be worked out', async () => {
    host.failing.diagnose = { code: 'internal', message: 'The knowledge could not be read.' };
    await openWith(null);
    render(<FindingsStation />);
    expect((await screen.findByRole('alert')).textContent).toContain('The knowledge could not be read.');
  });
});
