import { act, cleanup, fireEvent, render, screen } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { FUELS } from '../../../../core/mixture/fuels.ts';
import { App } from '../../../../renderer/app/app.tsx';
import { HEAT_PARTS, hrefOf, STATIONS, type Route } from '../../../../renderer/app/route.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { english, TextProvider } from '../../../../renderer/text/index.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';
import { ok } from '../../../../shared/result.ts';
import { radialReading } from '../../../fixtures/radial-eighteen.ts';
import { oilyThird, oilyThirdSheet } from '../../../fixtures/told-findings.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage } from '../support/page.ts';
import { measure as photoMeasure, photo } from '../photos/photo.ts';
import { rawTextsIn, stringsIn } from './raw-texts.ts';
import { markedCatalogue } from './pseudo-catalogue.ts';

const catalogue = markedCatalogue(english);
/** Titles of sources stand as they were printed; the rest is what the stand-in host and the demo say of themselves. */
const known = [...stringsIn(KNOWLEDGE.sources), ...Object.keys(FUELS), '/bench', 'test'];
const findings = oilyThird;
const nameless: Engine = { ...oilyThirdSheet.engine, name: '⟦name⟧' };

async function show(route: Route): Promise<HTMLElement> {
  window.location.hash = hrefOf(route);
  const { container } = render(<TextProvider value={catalogue}><App /></TextProvider>);
  await screen.findByRole('main');
  await act(async () => { await new Promise((done) => { setTimeout(done, 50); }); });
  for (const closed of container.querySelectorAll('main button[aria-expanded="false"]:not([aria-haspopup])')) fireEvent.click(closed);
  return container.ownerDocument.body;
}

async function library(sheet: typeof oilyThirdSheet, engine: Engine): Promise<{ readonly engineId: string; readonly id: string }> {
  const saved = await useStore.getState().saveEngine(null, engine);
  if (!saved.ok) throw new Error('the engine was not saved');
  const started = await useStore.getState().startReading(saved.value.id);
  if (!started.ok) throw new Error('the reading was not started');
  host.readings.set(started.value, { id: started.value, engineId: saved.value.id, state: 'draft', revision: 1, changedAt: '2026-03-14T09:30:00Z', sheet: { ...sheet, engine }, pending: {}, findings });
  return { engineId: saved.value.id, id: started.value };
}

let host: FakeHost;

describe('with another catalogue, no word of this one is left', () => {
  beforeEach(() => {
    host = freshPage();
    vi.stubGlobal('corenose', { ...host.bridge, diagnose: async () => ok(findings) });
  });
  afterEach(cleanup);

  it('on an empty shelf', async () => { expect(rawTextsIn(await show({ page: 'shelf' }), known)).toEqual([]); });
  it('on the settings', async () => { expect(rawTextsIn(await show({ page: 'settings' }), known)).toEqual([]); });
  it('where a new engine is written down', async () => { expect(rawTextsIn(await show({ page: 'engine-new' }), known)).toEqual([]); });
  it('where nothing is', async () => { expect(rawTextsIn(await show({ page: 'lost' }), known)).toEqual([]); });

  it.each(['shelf', 'engine', 'engine-edit', 'engine-heat'] as const)('on the %s screen of an engine', async (page) => {
    const { engineId } = await library(oilyThirdSheet, nameless);
    expect(rawTextsIn(await show(page === 'shelf' ? { page } : { page, id: engineId }), known)).toEqual([]);
  });

  it.each(HEAT_PARTS)('on the %s part of the heat screen', async (part) => {
    const { engineId } = await library(oilyThirdSheet, nameless);
    expect(rawTextsIn(await show({ page: 'engine-heat', id: engineId, part }), known)).toEqual([]);
  });

  it.each(STATIONS)('at the station %s', async (station) => {
    const { id } = await library(oilyThirdSheet, nameless);
    const body = await show({ page: 'reading', id, station });
    if (station === 'findings') expect(body.textContent).toContain(`⟦${oilyThird.summary}⟧`);
    expect(rawTextsIn(body, known)).toEqual([]);
  });

  it.each(STATIONS)('at the station %s of a radial with two plugs a cylinder', async (station) => {
    const { id } = await library({ ...radialReading, title: '⟦title⟧' }, { ...radialReading.engine, name: '⟦name⟧' });
    expect(rawTextsIn(await show({ page: 'reading', id, station }), known)).toEqual([]);
  });

  it.each([
    {}, { shelf: 'looks' }, { shelf: 'causes', entry: 'rings-worn' }, { shelf: 'checks', entry: 'compression-test' }, { shelf: 'checks', entry: 'air-filter-look' },
    { shelf: 'stops' }, { shelf: 'bars' }, { shelf: 'contradictions' }, { shelf: 'cautions', entry: 'leaded-deposits' }, { shelf: 'sources' }, { shelf: 'looks', entry: 'nowhere' },
  ] as const)('where the knowledge is looked up: %j', async (where) => {
    expect(rawTextsIn(await show({ page: 'knowledge', ...where }), known)).toEqual([]);
  });

  it('where lines of one’s own stand, and where one is written with mistakes', async () => {
    const says = { kind: 'makes', of: 'rings-worn', condition: 'oil-wet', strength: 'rarely' } as const;
    await host.bridge['shop.save']({ id: null, on: true, by: '⟦Ann⟧', because: '⟦A whole sentence.⟧', says });
    const body = await show({ page: 'knowledge', shelf: 'yours' });
    fireEvent.click((await screen.findAllByRole('button', { name: /^⟦Change: / }))[0]!);
    fireEvent.click(await screen.findByRole('button', { name: /Keep the change/ }));
    expect(body.textContent).toContain('There is a line that says this already.');
    expect(rawTextsIn(body, known)).toEqual([]);
  });

  it('where what spoke in a reading is told', async () => {
    const { id } = await library(oilyThirdSheet, nameless);
    const body = await show({ page: 'knowledge', shelf: 'here', entry: id });
    await screen.findByRole('heading', { name: /What spoke in/ });
    expect(rawTextsIn(body, known)).toEqual([]);
  });

  it('among the photos of a reading, at one of them, over the years and in the library of all', async () => {
    const { engineId, id } = await library(oilyThirdSheet, nameless);
    const marked = { name: '⟦photo⟧', engineId, camera: '⟦camera⟧', measure: photoMeasure({ suggests: [], light: { clipped: 0.1, dark: 0, mixed: 9 }, specks: 2, grain: 1.2 }) };
    const older = await useStore.getState().startReading(engineId);
    host.photos.set('a', photo({ ...marked, id: 'a', readingId: id, place: { cylinder: 3, position: 'only' }, annotations: [{ kind: 'text', x: 1, y: 1, words: '⟦words⟧' }] }));
    host.photos.set('b', photo({ ...marked, id: 'b', readingId: id, measure: null, measured: false }));
    if (older.ok) host.photos.set('c', photo({ ...marked, id: 'c', readingId: older.value, place: { cylinder: 3, position: 'only' }, colour: 'cmyk' }));
    for (const route of [
      { page: 'reading', id, station: 'photos' }, { page: 'reading', id, station: 'photos', field: 'a' }, { page: 'reading', id, station: 'photos', field: 'b' },
      { page: 'engine-photos', id: engineId }, { page: 'photos' },
    ] as const) {
      const body = await show(route);
      expect(body.innerHTML).toContain(route.page === 'photos' ? '⟦3 photos⟧' : '⟦photo⟧');
      expect(rawTextsIn(body, known)).toEqual([]);
      cleanup();
    }
  });

  it('among the errands of a reading', async () => {
    const { id } = await library(oilyThirdSheet, nameless);
    const body = await show({ page: 'reading', id, station: 'run' });
    fireEvent.keyDown(window, { key: 'k', ctrlKey: true });
    expect((await screen.findAllByRole('option')).length).toBeGreaterThan(15);
    expect(rawTextsIn(body, known)).toEqual([]);
  });

  it('on the sheet of keys', async () => {
    const body = await show({ page: 'shelf' });
    fireEvent.keyDown(window, { key: '?' });
    await screen.findByRole('dialog');
    expect(rawTextsIn(body, known)).toEqual([]);
  });

  it('and a planted one is found', () => {
    document.body.innerHTML = '<p title="⟦fine⟧">⟦fine ⟦inside⟧⟧</p><p aria-label="Planted">12</p><b>Also planted</b>';
    expect(rawTextsIn(document.body, known)).toEqual(['planted', 'also planted']);
  });
});
