import { cleanup, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { CURE_TRUST } from '../../../../core/knowledge/cures.ts';
import { HEALTHY_PLUG } from '../../../../core/knowledge/findings.ts';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { MOVES, PRIORS, STRENGTHS } from '../../../../core/knowledge/strengths.ts';
import { routeOf } from '../../../../renderer/app/route.ts';
import { KnowledgeScreen } from '../../../../renderer/features/knowledge/index.ts';
import { usesOf } from '../../../../renderer/features/knowledge/uses.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();
type Where = Parameters<typeof KnowledgeScreen>[0];

function show(where: Where): HTMLElement {
  cleanup();
  render(<KnowledgeScreen {...where} />);
  return screen.getByRole('article');
}
const word = (id: string): HTMLElement => show({ shelf: 'words', entry: id });

beforeEach(async () => {
  freshPage();
  await useStore.getState().start();
});
afterEach(cleanup);

describe('the words of the knowledge', () => {
  it('have a page each, with what it stands for and that nobody counted it', () => {
    const said = (p: number): string => `Stands for ${new Intl.NumberFormat('en', { maximumFractionDigits: 1 }).format(100 * p)} in 100.`;
    for (const [id, p] of [...Object.entries(STRENGTHS), ...Object.entries(PRIORS)]) {
      const page = word(id);
      expect(within(page).getByRole('heading', { level: 2, name: id })).toBeTruthy();
      expect(page.textContent).toContain(said(p));
      expect(page.textContent).toContain('not counted failures');
    }
    for (const [id, factor] of Object.entries(MOVES)) expect(word(id).textContent).toContain(factor >= 1 ? `× ${factor}` : `÷ ${Math.round(1 / factor)}`);
  });

  it('are met on their pages in every place that uses them, none twice and none left out', () => {
    const ids = [...Object.keys(STRENGTHS), ...Object.keys(PRIORS), ...Object.keys(MOVES)];
    const all = ids.map((id) => usesOf(id, KNOWLEDGE));
    const { causes, conditions, checks } = KNOWLEDGE;
    const count = (kind: keyof ReturnType<typeof usesOf>): number => all.reduce((sum, uses) => sum + uses[kind].length, 0);
    const lines = <T,>(list: readonly T[], of: (one: T) => readonly unknown[]): number => list.reduce((sum, one) => sum + of(one).length, 0);
    expect(count('makes')).toBe(lines(causes, ({ makes }) => makes));
    expect(count('shows')).toBe(lines(conditions, ({ shows }) => shows));
    expect(count('found')).toBe(lines(causes, ({ shows }) => shows));
    expect(count('gives')).toBe(lines(causes, ({ gives }) => gives) + lines(conditions, ({ gives }) => gives));
    expect(count('moved')).toBe(lines(causes, ({ moved }) => moved));
    expect(count('common')).toBe(causes.length);
    expect(count('checks')).toBe(2 * checks.filter(({ tells }) => 'finds' in tells).length);
    expect(count('cures')).toBe(Object.keys(CURE_TRUST).length);
  });

  it('open each kind of place as a list of links to it', async () => {
    const page = word('very rare');
    const rare = KNOWLEDGE.causes.filter(({ prior }) => prior === 'very rare');
    await user.click(within(page).getByRole('button', { name: new RegExp(`^Causes that are so common\\W*${rare.length} places$`) }));
    expect(rare.length).toBeGreaterThan(0);
    for (const { id, name } of rare) expect(within(page).getByRole('link', { name }).getAttribute('href')).toBe(`#/knowledge/causes/${id}`);
  });

  it('are reached from every line that uses one, by keyboard as any link', async () => {
    const page = show({ shelf: 'causes', entry: 'rings-worn' });
    const cause = KNOWLEDGE.causes.find(({ id }) => id === 'rings-worn')!;
    const lines = [...cause.makes, ...cause.shows, ...cause.gives];
    const words = within(page).getAllByRole('link').filter((link) => link.getAttribute('href')?.startsWith('#/knowledge/words/'));
    // Every line, how common the cause is, and how far its cure is trusted.
    expect(words).toHaveLength(lines.length + cause.moved.length + 2);
    for (const link of words) {
      const route = routeOf(link.getAttribute('href')!);
      expect(route).toMatchObject({ page: 'knowledge', shelf: 'words' });
      expect(link.tabIndex).toBe(0);
    }
    const { page: _, ...where } = routeOf(words[0]!.getAttribute('href')!) as Where & { page: string };
    expect(show(where).textContent).not.toContain('There is nothing called so here');
  });

  it('of a check say how surely it finds, and how often falsely', () => {
    const check = KNOWLEDGE.checks.find(({ id }) => id === 'timing-light')!;
    if (!('finds' in check.tells)) throw new Error('it looks for causes');
    const page = show({ shelf: 'checks', entry: check.id });
    for (const said of [check.tells.finds, check.tells.falselyFinds]) expect(within(page).getAllByRole('link', { name: said }).length).toBeGreaterThan(0);
  });
});

describe('what stands beside the lines', () => {
  it('is the trust in cures, by kind of cause with its reason', () => {
    const page = word('cures');
    for (const { because } of Object.values(CURE_TRUST)) expect(page.textContent).toContain(because);
    expect(page.querySelectorAll('li')).toHaveLength(Object.keys(CURE_TRUST).length);
  });

  it('is what is met with nothing wrong, in shares of the whole', () => {
    const page = word('well');
    const gap = Object.entries(HEALTHY_PLUG.gap);
    const all = gap.reduce((sum, [, weight]) => sum + weight, 0);
    expect(page.textContent).toContain(`as set ${Math.round((100 * HEALTHY_PLUG.gap['as set']) / all)}\u00a0%`);
  });

  it('is found by its words, and every word too', async () => {
    show({ shelf: 'looks' });
    await user.type(screen.getByRole('textbox', { name: 'Find by word' }), 'trust cures');
    expect(within(screen.getByRole('navigation', { name: 'Find by word' })).getByRole('link', { name: 'Trust in cures' })).toBeTruthy();
  });
});
