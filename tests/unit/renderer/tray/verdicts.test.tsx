import { act, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { StationsRail } from '../../../../renderer/app/stations-rail.tsx';
import { PlugsStation } from '../../../../renderer/features/tray/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import type { Bridge, Reply } from '../../../../shared/channels.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import type { ReadingSheet } from '../../../../shared/formats/reading-sheet.v1.ts';
import { ok } from '../../../../shared/result.ts';
import { freshPage, openReadingOf } from '../support/page.ts';

const user = userEvent.setup();
const place = (name: RegExp): HTMLElement => screen.getByRole('option', { name });
const tray = (): HTMLElement => screen.getByRole('listbox', { name: /Tray/ });
const isMarkedOlder = (): boolean => tray().closest('section')?.dataset['older'] !== undefined;

const lookAt = ({ plugs }: ReadingSheet): Reply<'first-look'> => ok({
  plugs: plugs.map(({ cylinder, position = 'only', tip }) => ({
    cylinder, position, verdict: tip?.noseColour === 'black' ? 'dry carbon fouling' as const : 'normal' as const, also: [], belief: 0.9,
    thermal: { tooCold: 0, inWindow: 1, tooHot: 0 }, preIgnitionRisk: 'low' as const,
  })),
  heat: { step: 0 }, stop: plugs.some(({ tip }) => tip?.centreElectrode === 'melted') ? [{ rule: 'melted', why: 'Melted.' }] : [],
});

/** Questions for a first look that wait until the test answers them. Nobody ever hears of findings. */
let waiting: (() => void)[];
let answersAtOnce: boolean;

async function open(engine: Partial<Engine> = {}): Promise<string> {
  const host = freshPage();
  waiting = [];
  answersAtOnce = true;
  vi.stubGlobal('corenose', {
    ...host.bridge, diagnose: () => new Promise(() => undefined),
    'first-look': ({ sheet }) => new Promise((done) => { if (answersAtOnce) done(lookAt(sheet)); else waiting.push(() => { done(lookAt(sheet)); }); }),
  } satisfies Bridge);
  return openReadingOf({ name: 'Bench four', use: 'road', cylinders: 4, layout: 'inline', ...engine });
}

describe('a verdict in the tray', () => {
  beforeEach(async () => {
    await open();
    render(<PlugsStation />);
    place(/^Cylinder 1\b/).focus();
  });

  it('follows each answer, long before there are findings', async () => {
    await user.keyboard('{ArrowDown}3');
    expect(await screen.findByRole('option', { name: 'Cylinder 1, 1 of 18 entered, normal, belief 90 %' })).toBeTruthy();
    await user.keyboard('{ArrowUp}7');
    expect(await screen.findByRole('option', { name: 'Cylinder 1, 1 of 18 entered, dry carbon fouling, belief 90 %' })).toBeTruthy();
    expect(useStore.getState().reading?.findings).toBeNull();
    expect(place(/^Cylinder 2, nothing entered$/)).toBeTruthy();
  });

  it('from before an answer stays where it was, and is marked as older once the new one keeps one waiting', async () => {
    await user.keyboard('{ArrowDown}3');
    await waitFor(() => { expect(tray().getAttribute('aria-busy')).toBe('false'); });
    answersAtOnce = false;
    await user.keyboard('{ArrowUp}7');
    expect(place(/^Cylinder 1, .*normal/)).toBeTruthy();
    expect([tray().getAttribute('aria-busy'), isMarkedOlder()]).toEqual(['true', false]);
    await waitFor(() => { expect(isMarkedOlder()).toBe(true); });
    await act(async () => { for (const answer of waiting.splice(0)) answer(); await Promise.resolve(); });
    expect(place(/^Cylinder 1, .*dry carbon fouling/)).toBeTruthy();
    expect([tray().getAttribute('aria-busy'), isMarkedOlder()]).toEqual(['false', false]);
  });
});

describe('where the places are too small for words', () => {
  it('the verdicts in words follow each answer as well', async () => {
    await open({ cylinders: 9, layout: 'radial', plugsPerCylinder: 2, use: 'aircraft' });
    render(<PlugsStation />);
    place(/^Cylinder 1,? upper\b/).focus();
    await user.keyboard('{Enter}{ArrowDown}7');
    expect(await within(await screen.findByRole('list', { name: 'Verdicts by cylinder' })).findByText('dry carbon fouling')).toBeTruthy();
  });
});

describe('the rail', () => {
  it('tells of a stop as soon as it is decided', async () => {
    const id = await open();
    render(<StationsRail id={id} station="plugs" />);
    expect(screen.queryByText('stop')).toBeNull();
    await act(async () => { useStore.getState().act({ type: 'tip', plug: '2', facet: 'centreElectrode', value: 'melted' }); await Promise.resolve(); });
    expect(await within(screen.getByRole('link', { name: /Findings/ })).findByText(/stop/i)).toBeTruthy();
  });
});
