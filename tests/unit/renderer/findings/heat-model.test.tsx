import { render, screen, within } from '@testing-library/react';
import { beforeEach, describe, expect, it } from 'vitest';
import { HeatModel } from '../../../../renderer/features/findings/heat-model.tsx';
import { useStore } from '../../../../renderer/state/store.ts';
import { oilyThird } from '../../../fixtures/told-findings.ts';
import { freshPage } from '../support/page.ts';

const told = oilyThird.heat.model!;

describe('the two parts of the heat advice', () => {
  beforeEach(() => { freshPage(); });

  it('say what the tips ask for, what the model says, and whether they agree, with the band of the neighbour', () => {
    render(<HeatModel model={told} />);
    expect(screen.getByText('They ask for no step.')).toBeTruthy();
    expect(screen.getByText('Both agree.')).toBeTruthy();
    const row = screen.getByRole('row', { name: /^one step hotter, at full load/ });
    expect(within(row).getAllByRole('cell').map(({ textContent }) => textContent)).toEqual(['710 °C to 870 °C', 'under 1 %', '14 %']);
  });

  it('stay and say so where they disagree', () => {
    render(<HeatModel model={{ ...told, tipsStep: 1, standing: 'disagrees' }} />);
    expect(screen.getByText(/They disagree\. Then the answer is: stay/)).toBeTruthy();
  });

  it('say what the record lacks', () => {
    render(<HeatModel model={{ ...told, says: 'not computed', standing: 'silent', tips: [], assumed: [], missing: ['bore', 'stroke'] }} />);
    expect(screen.getByText('Not asked; the record lacks: bore; stroke.')).toBeTruthy();
    expect(screen.queryByRole('table')).toBeNull();
  });

  it('speak in the units that were set', () => {
    useStore.setState(({ settings }) => ({ settings: { ...settings, units: 'inch' } }));
    render(<HeatModel model={told} />);
    expect(screen.getByText('1310 °F to 1598 °F')).toBeTruthy();
  });
});
