import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { useState } from 'react';
import { QuantityField } from '../../../../renderer/ui/quantity-field.tsx';
import { PENDING_LIMIT } from '../../../../shared/channels.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();
let seen: { value: number | undefined; raw: string | undefined };

function Gap() {
  const [entry, setEntry] = useState<typeof seen>({ value: undefined, raw: undefined });
  seen = entry;
  return <QuantityField label="Gap" quantity="length" range={[0, 5]} {...entry} onEntry={(value, raw) => setEntry({ value, raw })} />;
}
const field = () => screen.getByRole('textbox', { name: 'Gap' });
const about = () => document.getElementById(field().getAttribute('aria-describedby')?.split(' ')[1] ?? '')?.textContent;

describe('a gap that is typed', () => {
  beforeEach(() => { freshPage(); render(<Gap />); });

  it('with a decimal comma is taken, and shown with a point afterwards', async () => {
    await user.type(field(), '0,7');
    expect(field()).toHaveProperty('value', '0,7');
    await user.tab();
    expect(seen).toEqual({ value: 0.7, raw: undefined });
    expect(field()).toHaveProperty('value', '0.7');
  });

  it('beyond what is allowed stays in the field, counts for nothing, and says what is allowed', async () => {
    await user.type(field(), '7');
    await user.tab();
    expect(seen).toEqual({ value: undefined, raw: '7' });
    expect(field()).toHaveProperty('value', '7');
    expect(field().getAttribute('aria-invalid')).toBe('true');
    expect(about()).toBe('Out of range. Give 0 to 5 mm.');
  });

  it('is not taken longer than can be kept for later', async () => {
    await user.click(field());
    await user.paste('7'.repeat(PENDING_LIMIT + 50));
    expect(seen.raw).toHaveLength(PENDING_LIMIT);
  });

  it('is not scolded while it is being typed', async () => {
    await user.type(field(), '7');
    expect(field().getAttribute('aria-invalid')).toBe('false');
    expect(about()).toBe('Give 0 to 5 mm.');
  });

  it('holds still below while something else is pressed, so that the press does not miss', async () => {
    render(<button type="button">Save</button>);
    await user.type(field(), '7');
    await user.pointer({ keys: '[MouseLeft>]', target: screen.getByRole('button', { name: 'Save' }) });
    expect(document.activeElement).not.toBe(field());
    expect(about()).toBe('Give 0 to 5 mm.');
    await user.pointer({ keys: '[/MouseLeft]' });
    await expect.poll(about).toBe('Out of range. Give 0 to 5 mm.');
  });

  it('is not observed any more when it is wiped', async () => {
    await user.type(field(), '0.7');
    await user.clear(field());
    expect(seen).toEqual({ value: undefined, raw: undefined });
  });

  it('is shown in inches as soon as the units are changed', async () => {
    await user.type(field(), '0.7112');
    await user.tab();
    useStore.setState({ settings: { ...useStore.getState().settings, units: 'inch' } });
    expect(await screen.findByDisplayValue('0.028')).toBe(field());
    expect(seen.value).toBe(0.7112);
  });
});
