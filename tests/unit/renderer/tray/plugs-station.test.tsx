import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { PlugsStation } from '../../../../renderer/features/tray/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
const sheet = (): ReadingSheet => useStore.getState().reading!.history.now.sheet;
const tipOf = (cylinder: number): Tip | undefined => sheet().plugs.find((plug) => plug.cylinder === cylinder)?.tip;
const place = (name: RegExp): HTMLElement => screen.getByRole('option', { name });
const selected = (): string => screen.getByRole('option', { selected: true }).getAttribute('aria-label')!;
const asked = (): string => screen.getByRole('radiogroup').getAttribute('aria-labelledby')!;
const said = (): string => screen.getByRole('status').textContent;

async function open(engine: Partial<Engine> = {}, field?: string): Promise<void> {
  freshPage();
  const id = await openReadingOf({ name: 'Bench four', use: 'road', cylinders: 4, layout: 'inline', ...engine });
  if (field !== undefined) window.location.hash = `#/reading/${id}/plugs/${field}`;
  render(<PlugsStation />);
}

async function openAtTray(engine: Partial<Engine> = {}): Promise<void> {
  await open(engine);
  place(/^Cylinder 1\b/).focus();
}

describe('the tray', () => {
  it('has a place for every plug of the engine and one stop for the Tab key', async () => {
    await open({ cylinders: 9, layout: 'radial', plugsPerCylinder: 2, use: 'aircraft' });
    const places = within(screen.getByRole('listbox', { name: /Tray/ })).getAllByRole('option');
    expect(places).toHaveLength(18);
    expect(places.filter((option) => option.tabIndex === 0)).toHaveLength(1);
  });

  it('is walked with the arrows as the plugs lie', async () => {
    await openAtTray({ cylinders: 6, layout: 'vee', banks: [[1, 3, 5], [2, 4, 6]] });
    await user.keyboard('{ArrowRight}');
    expect(selected()).toMatch(/^Cylinder 3,/);
    await user.keyboard('{ArrowDown}');
    expect(selected()).toMatch(/^Cylinder 4,/);
    expect(document.activeElement).toBe(place(/^Cylinder 4,/));
  });

  it('goes from plug to plug in order with the brackets, wherever the focus is', async () => {
    await openAtTray();
    await user.keyboard(']]');
    expect(selected()).toMatch(/^Cylinder 3,/);
    await user.keyboard('{Enter}[[');
    expect(selected()).toMatch(/^Cylinder 2,/);
  });

  it('says how much of a plug is entered', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}14');
    expect(place(/^Cylinder 1, 2 of 18 entered/)).toBeTruthy();
    expect(place(/^Cylinder 2, nothing entered/)).toBeTruthy();
  });

  it('says the verdict and its belief once they are decided, and only of plugs somebody looked at', async () => {
    await openAtTray();
    await user.keyboard('o');
    const { reading } = useStore.getState();
    const plug = (cylinder: number) => ({ cylinder, position: 'only' as const, verdict: 'normal' as const, also: [], belief: 0.82, thermal: { tooCold: 0, inWindow: 1, tooHot: 0 }, preIgnitionRisk: 'low' as const });
    useStore.setState({ reading: { ...reading!, decided: { look: { plugs: [plug(1), plug(2)], stop: [] }, isOlder: false } } });
    expect(await screen.findByRole('option', { name: 'Cylinder 1, nothing entered, normal, belief 82 %' })).toBeTruthy();
    expect(place(/^Cylinder 2, nothing entered$/)).toBeTruthy();
  });

  it('keeps a place for a plug that was not read, and takes it back', async () => {
    await openAtTray();
    await user.click(screen.getByRole('button', { name: 'Not read' }));
    expect(sheet().plugs.map((plug) => plug.cylinder)).toEqual([2, 3, 4]);
    expect(document.activeElement).toBe(place(/^Cylinder 1, not read/));
    await user.click(screen.getByRole('button', { name: 'Read this plug' }));
    expect(sheet().plugs.map((plug) => plug.cylinder)).toEqual([1, 2, 3, 4]);
  });
});

describe('entry by keyboard', () => {
  it('reads a four with one oily cylinder in 14 keystrokes', async () => {
    await openAtTray();
    const keys = ['o', ']', 'o', ']', ']', 'o', '[', '4', '7', '4', '6', '4', '{Home}', '{ArrowDown}'];
    for (const key of keys) await user.keyboard(key.startsWith('[') ? '[[' : key);
    expect(keys.length).toBeLessThanOrEqual(25);
    for (const cylinder of [1, 2, 4]) expect(tipOf(cylinder)).toEqual({ overall: 'looks normal' });
    expect(tipOf(3)).toEqual({ overall: 'differs from its neighbours', noseColour: 'black', noseSurface: 'wet', deposit: 'wet oil', coverage: 'full' });
    expect(asked()).toBe('ask-noseColour');
  });

  it('sets the value of a key, says so, and asks the next question', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}{ArrowDown}{ArrowDown}5');
    expect(tipOf(1)).toEqual({ deposit: 'dry soot' });
    expect(said()).toBe('Cylinder 1: deposit dry soot');
    expect(asked()).toBe('ask-coverage');
  });

  it('reaches the values beyond the digits: 0, minus, equals and the row below', async () => {
    await openAtTray();
    for (const [key, deposit] of [['0', 'ash crust'], ['-', 'lead beads'], ['=', 'lead film'], ['q', 'lead of unknown form'], ['t', 'rust-coloured film']] as const) {
      await user.keyboard('{Home}{ArrowDown}{ArrowDown}{ArrowDown}' + key);
      expect(tipOf(1)).toEqual({ deposit });
    }
  });

  it('goes down the row of plugs with the same question when Shift is held', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}{Shift>}[Digit3][Digit3][Digit7]{/Shift}');
    expect([1, 2, 3].map((cylinder) => tipOf(cylinder)?.noseColour)).toEqual(['light tan', 'light tan', 'black']);
    expect(asked()).toBe('ask-noseColour');
    expect(selected()).toMatch(/^Cylinder 4,/);
  });

  it('starts a plug nobody has looked at with the first question, and keeps the question between plugs that are read', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}3');
    expect(asked()).toBe('ask-noseSurface');
    await user.keyboard(']');
    expect(asked()).toBe('ask-overall');
    await user.keyboard('1{End}[[');
    expect(asked()).toBe('ask-terminal');
  });

  it('takes an answer back, and doubts it, with one key', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}3{ArrowUp}u');
    expect(tipOf(1)).toEqual({ noseColour: 'light tan', unsure: ['noseColour'] });
    await user.keyboard('u');
    expect(tipOf(1)).toEqual({ noseColour: 'light tan' });
    await user.keyboard('{Backspace}');
    expect(tipOf(1)).toBeUndefined();
    expect(said()).toBe('Cylinder 1: nose colour not observed');
  });

  it('copies to the plugs that have nothing, or with Shift to all, and the message takes it back', async () => {
    await openAtTray();
    await user.keyboard(']o[[{ArrowDown}3c');
    expect([1, 2, 3, 4].map((cylinder) => tipOf(cylinder))).toEqual([{ noseColour: 'light tan' }, { overall: 'looks normal' }, { noseColour: 'light tan' }, { noseColour: 'light tan' }]);
    await user.keyboard('{Shift>}c{/Shift}');
    expect(tipOf(2)).toEqual({ noseColour: 'light tan' });
    useStore.getState().messages.at(-1)?.undo?.();
    expect(tipOf(2)).toEqual({ overall: 'looks normal' });
  });

  it('takes the answer of the plug beside it with one key and goes on, and with Shift its whole tip', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}3]{ArrowDown}s');
    expect(tipOf(2)).toEqual({ noseColour: tipOf(1)?.noseColour });
    await user.keyboard(']{Shift>}s{/Shift}');
    expect(tipOf(3)).toEqual(tipOf(2));
    expect(said()).toBe('Cylinder 3: taken over from Cylinder 2.');
  });

  it('offers by touch what the plugs beside it show, part by part as well', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}3{Escape}');
    await user.click(place(/^Cylinder 2/));
    await user.click(screen.getByRole('button', { name: 'Same as' }));
    await user.click(await screen.findByRole('menuitem', { name: 'Cylinder 1: nose' }));
    expect(tipOf(2)).toEqual({ noseColour: 'light tan' });
    await user.click(place(/^Cylinder 4/));
    expect(screen.getByRole('button', { name: 'Same as' })).toHaveProperty('disabled', true);
  });

  it('tells of a copy in few words, and no longer than it can be taken back', async () => {
    await openAtTray({ cylinders: 18, layout: 'radial' });
    await user.keyboard('oc');
    expect(useStore.getState().messages.map(({ text }) => text)).toEqual(['Cylinder 1 copied to 17 other plugs.']);
    await user.keyboard(']u');
    expect(useStore.getState().messages).toHaveLength(1);
    await user.keyboard('1');
    expect(useStore.getState().messages).toEqual([]);
  });

  it('finds a value by its word', async () => {
    await openAtTray();
    await user.keyboard('/soot');
    const found = screen.getAllByRole('option').filter((option) => option.id.includes('-') && option.closest('ul') !== null).map((option) => option.textContent);
    expect(found.slice(0, 2)).toEqual(['dry soot Deposit on the nose', 'matt soot Nose surface']);
    await user.keyboard('{Enter}');
    expect(tipOf(1)).toEqual({ deposit: 'dry soot' });
    expect(document.activeElement?.id).toBe('ask-deposit');
  });

  it('keeps the focus with the question when the part it stood in folds away', async () => {
    await openAtTray();
    await user.keyboard('{End}{Enter}');
    expect(document.activeElement?.id).toBe('ask-terminal');
    await user.keyboard('{Home}');
    expect(document.activeElement?.id).toBe('ask-overall');
    await user.keyboard('o3');
    expect(tipOf(1)).toEqual({ overall: 'looks normal', noseColour: 'light tan' });
  });

  it('claims nothing of a reading that is kept and asks whether to open it again', async () => {
    await openAtTray();
    await user.keyboard('o');
    await useStore.getState().keepReading();
    await user.keyboard('3');
    expect(useStore.getState().reading?.refused).toBe(true);
    expect(said()).not.toMatch(/colour/);
    expect(tipOf(1)).toEqual({ overall: 'looks normal' });
  });

  it('leaves letters to the text while one is typed, and Escape leads back to the questions', async () => {
    await openAtTray();
    await user.keyboard('n');
    await screen.findByRole('textbox', { name: 'Note on this plug' });
    await new Promise((done) => setTimeout(done));
    await user.keyboard('oily u c 3');
    expect(sheet().plugs[0]?.note).toBe('oily u c 3');
    expect(tipOf(1)).toBeUndefined();
    await user.keyboard('{Escape}1');
    expect(tipOf(1)).toEqual({ overall: 'looks normal' });
  });

  it('does nothing while the focus is elsewhere (WCAG 2.1.4)', async () => {
    await open();
    document.body.focus();
    await user.keyboard('o3c');
    expect(sheet().plugs.every((plug) => plug.tip === undefined)).toBe(true);
  });
});

describe('entry with the mouse and a screen reader', () => {
  it('offers the values of a question as radios with one Tab stop, walked by arrows and taken with Space', async () => {
    await open();
    await user.click(screen.getByRole('button', { name: /^Nose surface/ }));
    const group = screen.getByRole('radiogroup');
    expect(within(group).getAllByRole('radio').filter((radio) => radio.tabIndex === 0)).toHaveLength(1);
    await user.tab();
    await user.keyboard('{ArrowRight}{ArrowRight}');
    expect(tipOf(1)).toBeUndefined();
    await user.keyboard(' ');
    expect(tipOf(1)).toEqual({ noseSurface: 'matt soot' });
    expect(document.activeElement?.id).toBe('ask-deposit');
  });

  it('folds the parts that come later and opens the one that is asked', async () => {
    await open();
    expect(screen.queryByRole('button', { name: /^Soot ring/ })).toBeNull();
    await user.click(screen.getByRole('button', { name: /^Nose not observed/ }));
    await user.click(screen.getByRole('button', { name: /^Soot ring/ }));
    await user.click(screen.getByRole('radio', { name: 'wide' }));
    expect(tipOf(1)).toEqual({ sootRing: 'wide' });
  });

  it('says in words what the large drawing shows', async () => {
    await openAtTray();
    await user.keyboard('{ArrowDown}3');
    expect(within(screen.getByRole('figure')).getByText(/^Nose: colour light tan\. Not observed: rim, electrodes and outside\.$/)).toBeTruthy();
  });

  it('takes measurements in the units of the settings', async () => {
    await openAtTray();
    await user.keyboard('m');
    await user.type(await screen.findByRole('textbox', { name: 'Gap' }), '0.8');
    expect(sheet().plugs[0]?.measured).toEqual({ gapMm: 0.8 });
  });

  it('enters the fitted plug once for all cylinders', async () => {
    await open();
    await user.click(screen.getByRole('button', { name: /^The plug that was in the hole/ }));
    await user.click(screen.getByRole('radio', { name: 'No' }));
    await user.type(screen.getByRole('textbox', { name: /^Heat steps/ }), '-1');
    await user.click(screen.getByRole('button', { name: 'The same in all cylinders' }));
    expect(sheet().plugs.map((plug) => plug.fitted)).toEqual(Array(4).fill({ matchesSpecified: false, heatStepsFromSpecified: -1 }));
  });

  it('goes to the plug and the field that an address names', async () => {
    await open({}, '3.measured');
    expect(selected()).toMatch(/^Cylinder 3,/);
    expect(await screen.findByRole('textbox', { name: 'Gap' })).toBeTruthy();
  });

  it('goes to the question that an address names', async () => {
    await open({}, '2.heatLine');
    expect(selected()).toMatch(/^Cylinder 2,/);
    expect(document.activeElement?.id).toBe('ask-heatLine');
  });
});
