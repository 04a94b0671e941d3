import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { RunStation } from '../../../../renderer/features/run/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
const sheet = (): ReadingSheet => useStore.getState().reading!.history.now.sheet;
const group = (name: string) => screen.getByRole('radiogroup', { name });
const cylinders = (symptom: string) => screen.getByRole('toolbar', { name: `${symptom}: in which cylinder` });
const symptom = (name: string, answer: 'There' | 'Not there') => within(group(name)).getByRole('radio', { name: answer });

beforeEach(async () => {
  freshPage();
  await openReadingOf({ name: 'Bench four', use: 'road', cylinders: 4 });
  render(<RunStation />);
});

describe('how the engine ran', () => {
  it('is told by words that can be taken back', async () => {
    await user.click(within(group('Fuel')).getByRole('radio', { name: 'Petrol' }));
    await user.click(within(group('How it was stopped')).getByRole('radio', { name: 'Clean cut at load' }));
    await user.click(within(group('Fully warm')).getByRole('radio', { name: 'No' }));
    expect(sheet().conditions).toEqual({ fuel: 'petrol', stop: 'clean cut', warm: false });
    await user.click(within(group('Fully warm')).getByRole('radio', { name: 'No' }));
    expect(sheet().conditions).toEqual({ fuel: 'petrol', stop: 'clean cut' });
  });

  it('keeps numbers in the units of the sheet while another unit is shown', async () => {
    useStore.setState({ settings: { theme: 'system', units: 'inch', textSize: 'normal' } });
    await user.type(await screen.findByLabelText('Distance on these plugs'), '1000');
    // NIST Special Publication 811: one mile is 1.609344 km.
    expect(sheet().conditions?.distanceKm).toBeCloseTo(1609.344, 6);
  });

  it('keeps a number that cannot be taken in its field and says what is allowed', async () => {
    await user.type(screen.getByLabelText('Distance on these plugs'), 'many');
    await user.tab();
    expect(screen.getByLabelText<HTMLInputElement>('Distance on these plugs').value).toBe('many');
    expect(screen.getByText(/not a number that can be taken/).textContent).toContain('1,000,000 km');
    expect(sheet().conditions).toBeUndefined();
  });
});

describe('a symptom', () => {
  it('is there, or was looked for and not there, or is not known', async () => {
    await user.click(symptom('Blue smoke', 'There'));
    expect(sheet().symptoms).toEqual([{ what: 'blue smoke' }]);
    await user.click(symptom('Blue smoke', 'Not there'));
    expect(sheet().symptoms).toBeUndefined();
    expect(sheet().symptomsAbsent).toEqual(['blue smoke']);
    await user.click(symptom('Blue smoke', 'Not there'));
    expect(sheet().symptomsAbsent).toBeUndefined();
  });

  it('of one cylinder is tied to that cylinder alone', async () => {
    await user.click(symptom('Misfire under load', 'There'));
    await user.click(within(cylinders('Misfire under load')).getByRole('button', { name: 'Cylinder 3' }));
    expect(sheet().symptoms).toEqual([{ what: 'misfire under load', cylinder: 3 }]);
    await user.click(within(cylinders('Misfire under load')).getByRole('button', { name: 'Not tied to one' }));
    expect(sheet().symptoms).toEqual([{ what: 'misfire under load' }]);
  });

  it('of the whole engine asks for no cylinder', async () => {
    await user.click(symptom('Blue smoke', 'There'));
    expect(screen.queryByRole('toolbar', { name: 'Blue smoke: in which cylinder' })).toBeNull();
  });
});

describe('the search', () => {
  it('is one key away', async () => {
    await user.keyboard('/blue{Enter}');
    expect(sheet().symptoms).toEqual([{ what: 'blue smoke' }]);
  });

  it('marks by a few letters and Enter, one after the other, without the mouse', async () => {
    await user.click(screen.getByLabelText('Find a symptom or a circumstance'));
    await user.keyboard('mis lo{Enter}chok{Enter}');
    expect(sheet().symptoms).toEqual([{ what: 'misfire under load' }]);
    expect(sheet().conditions?.tags).toEqual(['choke sticking']);
    expect(screen.getAllByRole('status').map((status) => status.textContent)).toContain('Marked: Choke sticking');
  });

  it('does not untie a symptom from its cylinder when it is marked again', async () => {
    useStore.getState().act({ type: 'symptom', what: 'misfire', cylinder: 3, on: true });
    await user.type(screen.getByLabelText('Find a symptom or a circumstance'), 'misfire{Enter}');
    expect(sheet().symptoms).toEqual([{ what: 'misfire', cylinder: 3 }]);
  });

  it('leaves the lists whole again on Escape', async () => {
    await user.type(screen.getByLabelText('Find a symptom or a circumstance'), 'choke');
    expect(screen.queryByRole('radiogroup', { name: 'Blue smoke' })).toBeNull();
    await user.keyboard('{Escape}');
    expect(group('Blue smoke')).toBeTruthy();
  });
});

describe('what this reading can tell', () => {
  const plan = () => screen.getByRole('complementary', { name: 'What this reading can tell' });
  const mixture = () => within(plan()).getByRole('region', { name: 'Mixture and heat value' });

  it('follows what is entered, in words (S60: plugs left idling differ from those stopped at load)', async () => {
    expect(mixture().textContent).toContain('Not known yet');
    await user.click(within(group('How it was stopped')).getByRole('radio', { name: 'Idled, then stopped' }));
    expect(mixture().textContent).toContain('Says little');
    expect(mixture().textContent).toContain('The engine idled before it was stopped.');
    expect(within(plan()).getByText(/cut the ignition and let it coast/)).toBeTruthy();
  });

  it('opens the title of a source', async () => {
    const [mark] = within(mixture()).getAllByRole('button', { name: 'Source S62' });
    await user.click(mark!);
    expect((await screen.findByRole('dialog', { name: 'Source S62' })).textContent).toMatch(/off-road/i);
  });

  it('always warns of hot parts and of full load on public roads', () => {
    expect(plan().textContent).toContain('hot parts burn');
    expect(plan().textContent).toContain('Never full load on a public road');
  });
});
