import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { plugPlaces } from '../../../../core/domain/plugs.ts';
import { FindingsView } from '../../../../renderer/features/findings/findings-view.tsx';
import type { CauseFinding, Findings } from '../../../../shared/formats/findings.v1.ts';
import { oilyThird, oilyThirdSheet, stoppedThird } from '../../../fixtures/told-findings.ts';
import { freshPage } from '../support/page.ts';

const user = userEvent.setup();
const show = (findings: Findings) =>
  render(<FindingsView findings={findings} sheet={oilyThirdSheet} places={plugPlaces(oilyThirdSheet.engine)} hrefOf={({ id, cylinder }) => `#/there/${id}-${cylinder}`} />);
const before = (first: HTMLElement, second: HTMLElement): boolean => (first.compareDocumentPosition(second) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;

beforeEach(() => { freshPage(); });

describe('the answer', () => {
  it('begins with the sentence and says where the percentages come from', () => {
    show(oilyThird);
    const sentence = screen.getByText(oilyThird.summary);
    expect(before(sentence, screen.getByRole('heading', { name: 'In this order' }))).toBe(true);
    expect(screen.getByText(/graded expert knowledge, not from counted failures/)).toBeTruthy();
  });

  it('shows a stop rule by its word before any plan, and never its name in the knowledge', () => {
    const { container } = show(stoppedThird);
    const stop = screen.getByRole('region', { name: 'Stop' });
    expect(stop.textContent).toContain('Do not run the engine until this is cleared.');
    expect(stop.textContent).toContain('Look at the piston');
    expect(before(stop, screen.getByRole('heading', { name: 'In this order' }))).toBe(true);
    expect(container.textContent).not.toContain('detonation-specks');
  });

  it('tells the heat step in a word, what must come first, and that the engine maker\u2019s data outrank it', () => {
    show(stoppedThird);
    const heat = screen.getByRole('region', { name: 'Heat value of the plug' });
    expect(within(heat).getByText('One step colder')).toBeTruthy();
    expect(within(heat).getByText('Only after what comes first.')).toBeTruthy();
    expect(within(heat).getByText('Ignition timing as specified')).toBeTruthy();
    expect(within(heat).getByText('The engine maker\u2019s data come first, always.')).toBeTruthy();
  });

  it('ends with cautions, also when the findings name none', () => {
    show({ ...oilyThird, cautions: [] });
    expect(screen.getByRole('heading', { name: 'Cautions' })).toBeTruthy();
    expect(screen.getByText(/Hot parts, ignition voltage and fuel vapour/)).toBeTruthy();
  });

  it('shows no raw id and no digest', () => {
    const { container } = show(oilyThird);
    for (const raw of ['rings-worn', '@', 'compression-wet', 'f00d', 'tip.deposit', 'symptomsAbsent']) expect(container.textContent).not.toContain(raw);
  });
});

describe('the plug in question', () => {
  it('that cannot be judged has no belief, and the plan does not say that all is well', () => {
    const plugs = oilyThird.plugs.map((plug) => ({ ...plug, verdict: 'undetermined' as const, belief: 0 }));
    const { container } = show({ ...oilyThird, plugs, plan: [] });
    expect(container.textContent).not.toContain('exceptionally unlikely');
    expect(screen.getByRole('radio', { name: 'Cylinder 3: Undetermined' })).toBeTruthy();
    expect(screen.queryByText('Nothing has to be done.')).toBeNull();
  });

  it('is the gravest one at first', () => {
    show(oilyThird);
    expect(screen.getByRole('article', { name: 'Cylinder 3' })).toBeTruthy();
  });

  it('tells each belief by word, bar and number', () => {
    show(oilyThird);
    const plug = screen.getByRole('article', { name: 'Cylinder 3' });
    expect(plug.textContent).toContain('very likely97 %');
    expect(plug.textContent).toContain('likely71 %');
    expect(within(plug).getByText('too cold 62 %')).toBeTruthy();
    expect(within(plug).getByText('Raised')).toBeTruthy();
  });

  it('lays out what speaks for and against the likeliest cause, each with reason, weight and source', async () => {
    show(oilyThird);
    const balance = screen.getByRole('region', { name: 'What speaks for and against: oil past worn rings' });
    const [wet, noUse, smoke] = within(balance).getAllByRole('listitem').map((item) => item.textContent);
    expect(wet).toMatch(/strongly for it.*odds × 30.*deposit wet oil.*Oil that passes the rings/);
    expect(noUse).toMatch(/against it.*odds ÷ 4.3.*no oil use.*Worn rings use oil/);
    expect(smoke).toMatch(/a little for it.*odds × 2.3.*blue smoke/);
    await user.click(within(balance).getByRole('button', { name: 'Source S16' }));
    expect((await screen.findByRole('dialog', { name: 'Source S16' })).textContent).toContain('TM 10-3930-653-14');
    expect(balance.textContent).toContain('common practice, no source');
  });

  it('unfolds the next cause by its button', async () => {
    show(oilyThird);
    const guides = screen.getByRole('button', { name: /worn valve guide or seal/ });
    expect(guides.getAttribute('aria-expanded')).toBe('false');
    await user.click(guides);
    expect(guides.getAttribute('aria-expanded')).toBe('true');
  });

  it('names the check that tells most for its effort and leads to the field for its result', () => {
    show(oilyThird);
    const link = screen.getByRole('link', { name: 'Write down the result: Compression dry, then with oil, cylinder 3' });
    expect(link.getAttribute('href')).toBe('#/there/compression-wet-3');
    const first = link.closest('li');
    expect(first?.textContent).toContain('Tells most for its effort');
    expect(first?.textContent).toContain('about 15 min');
  });

  it('shows doubts', () => {
    show(oilyThird);
    expect(screen.getByText('Marked unsure, counted half: coverage full.')).toBeTruthy();
  });
});

describe('the row of all plugs', () => {
  it('stands in tray order, each named by its verdict and belief', () => {
    show(oilyThird);
    expect(within(screen.getByRole('radiogroup', { name: 'All plugs' })).getAllByRole('radio').map((plug) => plug.getAttribute('aria-label'))).toEqual([
      'Cylinder 1: Normal, very likely', 'Cylinder 2: Normal, very likely', 'Cylinder 3: Oil fouling, very likely', 'Cylinder 4: Normal, very likely',
    ]);
  });

  it('is walked by arrow keys and shows a plug by Enter', async () => {
    show(oilyThird);
    screen.getByRole('radio', { name: /Cylinder 3/ }).focus();
    await user.keyboard('{ArrowRight}{Enter}');
    expect(screen.getByRole('article', { name: 'Cylinder 4' })).toBeTruthy();
    expect(screen.queryByRole('article', { name: 'Cylinder 3' })).toBeNull();
  });
});

describe('on paper', () => {
  it('stand all plugs, those that are well a line each, though the screen shows one, and the cautions last', () => {
    show(oilyThird);
    const printed: unknown[] = [];
    vi.stubGlobal('print', () => {
      window.dispatchEvent(new Event('beforeprint'));
      const articles = screen.getAllByRole('article');
      const lines = screen.getAllByRole('rowheader', { name: /^Cylinder/ }).map((line) => line.textContent);
      printed.push(articles.map((article) => article.getAttribute('aria-label')), lines, before(articles.at(-1)!, screen.getByRole('heading', { name: 'Cautions' })));
      window.dispatchEvent(new Event('afterprint'));
    });
    screen.getByRole('button', { name: 'Print' }).click();
    expect(printed).toEqual([['Cylinder 3'], ['Cylinder 1', 'Cylinder 2', 'Cylinder 4'], true]);
  });

  it('stands the evidence of a cause that cylinders share once, with the engine', () => {
    const [leading] = oilyThird.plugs[2]!.causes;
    const shared: CauseFinding = { ...leading!, scope: 'engine' };
    show({ ...oilyThird, plugs: oilyThird.plugs.map((plug) => ({ ...plug, causes: [shared] })), engine: { ...oilyThird.engine, causes: [shared] } });
    let weighed = 0;
    vi.stubGlobal('print', () => {
      window.dispatchEvent(new Event('beforeprint'));
      weighed = screen.getAllByRole('button', { expanded: true }).length;
      window.dispatchEvent(new Event('afterprint'));
    });
    screen.getByRole('button', { name: 'Print' }).click();
    expect(weighed).toBe(1);
  });
});
