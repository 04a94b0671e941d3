import { act, fireEvent, render } from '@testing-library/react';
import type { ReactNode } from 'react';
import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { SincePanel, Timeline, WhatBecame } from '../../../../renderer/features/followup/index.ts';
import { useStore } from '../../../../renderer/state/store.ts';
import { english, TextProvider } from '../../../../renderer/text/index.ts';
import { markedCatalogue } from '../text/pseudo-catalogue.ts';
import { rawTextsIn, stringsIn, vocabularyWords } from '../text/raw-texts.ts';
import { engineWithReading, findingsOf, oily, sheetWith, tan } from './two-readings.ts';

const catalogue = markedCatalogue(english);

/** What stands on the screen and is neither in the catalogue nor a sentence of the findings, a word of the vocabulary or a title that somebody gave. */
async function rawWords(screen: ReactNode, said: readonly string[]): Promise<readonly string[]> {
  const { container } = render(<TextProvider value={catalogue}>{screen}</TextProvider>);
  await act(async () => { await new Promise((done) => { setTimeout(done, 600); }); });
  for (const closed of container.querySelectorAll('button[aria-expanded="false"]')) fireEvent.click(closed);
  return rawTextsIn(container, [...vocabularyWords(), ...stringsIn(KNOWLEDGE), ...said]);
}

const earlier = ['Workshop four', 'Blue smoke', '14 February 2026', '14 March 2026'];

describe('with another catalogue, no word of this one is left', () => {
  it('where cures are ticked', async () => {
    await engineWithReading({}, oily);
    expect(await rawWords(<SincePanel />, [...earlier, '14 February 2026: Blue smoke'])).toEqual([]);
  });

  it('in what became of the reading before', async () => {
    await engineWithReading({}, tan);
    const { followUp } = findingsOf({ ...useStore.getState().reading!.history.now.sheet });
    expect(await rawWords(<WhatBecame followUp={followUp!} />, [...earlier, ...stringsIn(followUp)])).toEqual([]);
  });

  it('on the plugs over the years', async () => {
    const { host, engineId, id } = await engineWithReading({}, tan);
    const sheet = sheetWith(tan, { date: '2026-03-14' });
    host.readings.set(id, { ...host.readings.get(id)!, state: 'kept', sheet, findings: findingsOf(sheet) });
    const timeline = await host.bridge['reading.timeline']({ engineId });
    expect(await rawWords(<Timeline id={engineId} />, [...earlier, ...stringsIn(timeline)])).toEqual([]);
  });
});
