import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { groundedLines } from '../../../../core/knowledge/lint/grounded-lines.ts';
import { routeOf } from '../../../../renderer/app/route.ts';
import { KnowledgeScreen, lineHref } from '../../../../renderer/features/knowledge/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();
type Where = Parameters<typeof KnowledgeScreen>[0];

let again: ((where: Where) => void) | undefined;

/** Opens the screen, or goes on to another place of it, as a person would. */
function show(where: Where): HTMLElement {
  if (again === undefined) {
    const { rerender } = render(<KnowledgeScreen {...where} />);
    again = (next) => rerender(<KnowledgeScreen {...next} />);
  } else again(where);
  return screen.getByRole('article');
}

beforeEach(async () => {
  freshPage();
  await useStore.getState().start();
});
afterEach(() => {
  cleanup();
  again = undefined;
});

const rowsIn = (page: HTMLElement): readonly HTMLElement[] => [...page.querySelectorAll<HTMLElement>('li')].filter((row) => row.className.split(' ').includes('line'));

describe('looking up what the program judges by', () => {
  it('shows every line of every cause with its reason', () => {
    for (const cause of KNOWLEDGE.causes) {
      const page = show({ shelf: 'causes', entry: cause.id });
      const links = [...cause.makes, ...cause.shows, ...cause.gives, ...cause.moved];
      const rows = rowsIn(page);
      expect(rows, cause.id).toHaveLength(links.length);
      links.forEach(({ because }, i) => { expect(rows[i]!.textContent).toContain(because); });
      expect(page.textContent).toContain(cause.cure);
    }
  });

  it('shows every line of every appearance, and every cause that makes it', () => {
    for (const condition of KNOWLEDGE.conditions) {
      const page = show({ shelf: 'looks', entry: condition.id });
      const makers = KNOWLEDGE.causes.filter(({ makes }) => makes.some((made) => made.condition === condition.id));
      expect(rowsIn(page), condition.id).toHaveLength(condition.shows.length + condition.gives.length + makers.length);
      const links = new Set([...page.querySelectorAll('a')].map((link) => link.textContent));
      for (const { name } of makers) expect(links).toContain(name);
      expect(within(page).getByRole('img').getAttribute('aria-label')).toContain('Drawing of the firing end');
    }
  });

  it.each(['checks', 'stops', 'bars', 'contradictions', 'cautions'] as const)('has a page for each of the %s, with its reason', (shelf) => {
    const { checks, stopRules: stops, barsOnHotter: bars, contradictions, cautions } = KNOWLEDGE;
    const list = { checks, stops, bars, contradictions, cautions }[shelf];
    for (const { id, because } of list) {
      expect(show({ shelf, entry: id }).textContent).toContain(because);
    }
  });

  it('leads from every line to the page where it stands, and marks it there', () => {
    for (const { place } of groundedLines(KNOWLEDGE).filter((_, i) => i % 23 === 0)) {
      const route = routeOf(lineHref(place, KNOWLEDGE));
      if (route.page !== 'knowledge' || route.entry === undefined) throw new Error(`${place} leads nowhere`);
      const page = show({ shelf: route.shelf, entry: route.entry, line: route.line });
      if (route.line !== undefined) expect(page.querySelectorAll('[data-here]'), place).toHaveLength(1);
    }
  });

  it('tells of a source every line that rests on it, and where it says otherwise', () => {
    const disputed = groundedLines(KNOWLEDGE).filter(({ against }) => against.length > 0);
    const sources = [...new Set(disputed.flatMap(({ against }) => against)), 'S16', 'common practice'];
    for (const source of sources) {
      const resting = groundedLines(KNOWLEDGE).filter((line) => line.sources.includes(source)).length;
      const page = show({ shelf: 'sources', entry: source });
      expect(within(page).getByRole('heading', { name: new RegExp(`^${resting} lines? rests? on it$`) })).toBeTruthy();
      const otherwise = disputed.filter(({ against }) => against.includes(source)).length;
      expect(rowsIn(page)).toHaveLength(resting + otherwise);
    }
  });

  it('shows both sides where sources differ', () => {
    const cause = KNOWLEDGE.causes.find(({ makes }) => makes.some(({ against }) => against !== undefined))!;
    const link = cause.makes.find(({ against }) => against !== undefined)!;
    const page = show({ shelf: 'causes', entry: cause.id });
    for (const dissent of [link.against!].flat()) expect(page.textContent).toContain(`Says otherwise: ${dissent.says}`);
    expect(page.textContent).toContain(link.because);
  });

  it('finds by any word: a name, another name for it, a value, in every list at once', async () => {
    show({ shelf: 'looks' });
    await user.type(screen.getByRole('textbox', { name: 'Find by word' }), 'oil pump');
    const found = within(screen.getByRole('navigation', { name: 'Find by word' }));
    expect(found.getByRole('link', { name: 'Piston rings or cylinder bore worn' }).getAttribute('href')).toBe('#/knowledge/causes/rings-worn');
    await user.clear(screen.getByRole('textbox', { name: 'Find by word' }));
    await user.type(screen.getByRole('textbox', { name: 'Find by word' }), 'xylophone');
    expect(screen.getByText('Nothing has these words.')).toBeTruthy();
  });

  it('is walked by arrow keys, and / goes to the field', () => {
    show({ shelf: 'looks' });
    const [first, second] = within(screen.getByRole('navigation', { name: 'List: Appearances' })).getAllByRole('link');
    first!.focus();
    fireEvent.keyDown(first!, { key: 'ArrowDown' });
    expect(document.activeElement).toBe(second);
    fireEvent.keyDown(second!, { key: 'ArrowUp' });
    expect(document.activeElement).toBe(first);
    fireEvent.keyDown(window, { key: '/' });
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Find by word' }));
  });

  it('says what its words stand for and how much rests on what, adding up', () => {
    const page = show({});
    expect(within(page).getByRole('row', { name: /^usually 70 in 100/ })).toBeTruthy();
    const [, all, documented, practice, memory] = /(\d+) lines in all: (\d+) rest on one or more of \d+ documents, (\d+) on common practice without a document, (\d+) on memory alone/.exec(page.textContent)!.map(Number);
    expect(documented! + practice! + memory!).toBe(all);
    expect(all).toBe(groundedLines(KNOWLEDGE).length);
  });

  it('says so where nothing is called that', () => { expect(show({ shelf: 'causes', entry: 'gremlins' }).textContent).toContain('There is nothing called so here.'); });
});
