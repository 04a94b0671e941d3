import { fireEvent, render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { DropPhotos, PhotosStation } from '../../../../renderer/features/photos/index.ts';
import { Messages } from '../../../../renderer/app/messages.tsx';
import { useStore } from '../../../../renderer/state/store.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import type { Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import type { FakeHost } from '../support/fake-host.ts';
import { freshPage, openReadingOf } from '../support/page.ts';
import { measure, photo } from './photo.ts';

const user = userEvent.setup();
let host: FakeHost;
let readingId: string;

const add = (id: string, changed: Partial<PhotoRecord> = {}): PhotoRecord => {
  const made = photo({ id, name: `${id}.jpg`, readingId, engineId: useStore.getState().reading!.engineId, ...changed });
  host.photos.set(id, made);
  return made;
};
const at = (cylinder: number) => ({ cylinder, position: 'only' as const });
const placeOf = (id: string) => host.photos.get(id)?.place?.cylinder ?? null;
const card = (name: RegExp) => screen.findByRole('link', { name });
const tip = (cylinder: number): Tip | undefined => useStore.getState().reading!.history.now.sheet.plugs.find((plug) => plug.cylinder === cylinder)?.tip;

async function show(id?: string): Promise<void> {
  window.location.hash = `#/reading/${readingId}/photos${id === undefined ? '' : `/${id}`}`;
  render(<><PhotosStation /><Messages /></>);
  await screen.findByRole(id === undefined ? 'button' : 'region', id === undefined ? { name: 'Add photos' } : { name: 'About this photo' });
}

beforeEach(async () => {
  host = freshPage();
  readingId = await openReadingOf({ name: 'Bench four', use: 'road', cylinders: 4, layout: 'inline' });
});

describe('the photos of a reading', () => {
  it('teach how to take one while there is none', async () => {
    await show();
    expect(await screen.findByText(/grey card or plain paper/)).toBeTruthy();
  });

  it('are laid to the plugs in the order taken, and one step takes all of it back', async () => {
    add('later', { takenAt: '2026-03-14T10:05:00' });
    add('first', { takenAt: '2026-03-14T10:01:00' });
    await show();
    await user.click(await screen.findByRole('button', { name: 'Lay in the order taken' }));
    await waitFor(() => expect([placeOf('first'), placeOf('later')]).toEqual([1, 2]));
    await user.click(await screen.findByRole('button', { name: 'Undo' }));
    await waitFor(() => expect([placeOf('first'), placeOf('later')]).toEqual([null, null]));
  });

  it('are laid one by one with the keys, which keep the focus on the photo', async () => {
    add('one');
    await show();
    (await card(/^one\.jpg/)).focus();
    await user.keyboard('3');
    await waitFor(() => expect(placeOf('one')).toBe(3));
    expect(document.activeElement).toBe(await card(/^one\.jpg, Cylinder 3/));
    await user.keyboard(']');
    await waitFor(() => expect(placeOf('one')).toBe(4));
    await user.keyboard('v');
    await waitFor(() => expect(host.photos.get('one')?.view).toBe('side'));
    await user.keyboard('{Control>}z{/Control}{Control>}z{/Control}');
    await waitFor(() => expect([placeOf('one'), host.photos.get('one')?.view]).toEqual([3, 'end-on']));
    await user.keyboard('{Control>}y{/Control}');
    await waitFor(() => expect(placeOf('one')).toBe(4));
  });

  it('are dragged to a plug', async () => {
    add('one');
    await show();
    const carried = new Map<string, string>();
    const dataTransfer = {
      setData: (type: string, data: string) => carried.set(type, data), getData: (type: string) => carried.get(type),
      get types() { return [...carried.keys()]; },
    };
    fireEvent.dragStart(await card(/^one\.jpg/), { dataTransfer });
    fireEvent.drop(screen.getByRole('region', { name: 'Cylinder 2' }), { dataTransfer });
    await waitFor(() => expect(placeOf('one')).toBe(2));
  });

  it('lie several to a plug, in their order', async () => {
    add('side', { place: at(1), order: 1, view: 'side' });
    add('end', { place: at(1), order: 0 });
    await show();
    const names = within(await screen.findByRole('region', { name: 'Cylinder 1' })).getAllByRole('link').map((link) => link.getAttribute('aria-label'));
    expect(names).toEqual(['end.jpg, Cylinder 1, end-on', 'side.jpg, Cylinder 1, side']);
  });

  it('are removed, and come back', async () => {
    add('one', { place: at(1) });
    await show();
    (await card(/^one/)).focus();
    await user.keyboard('{Delete}');
    await waitFor(() => expect(screen.queryByRole('link', { name: /^one/ })).toBeNull());
    await user.click(await screen.findByRole('button', { name: 'Undo' }));
    await card(/^one/);
  });
});

describe('photos on their way in', () => {
  const file = (name: string): File => new File(['x'], name, { type: 'image/jpeg' });
  const answer = (value: unknown) => new Response(JSON.stringify(value), { status: 200 });

  it('tell on each why it could not be taken, and nothing else stops', async () => {
    vi.stubGlobal('fetch', async (address: string) => {
      const name = new URL(address, 'http://x').searchParams.get('name')!;
      if (name === 'broken.jpg') return answer({ ok: false, error: { code: 'bad-request', problems: [{ path: name, message: 'the file is incomplete' }] } });
      return answer({ ok: true, value: { photo: add(name.replace('.jpg', ''), { measure: null, measured: false }), known: name === 'again.jpg' } });
    });
    await show();
    await user.upload(screen.getByLabelText('Add photos', { selector: 'input' }), [file('broken.jpg'), file('good.jpg'), file('again.jpg')]);
    await card(/^good/);
    expect(await screen.findByText(/1 photo added\. 1 were in this reading already\. 1 could not be taken\./)).toBeTruthy();
    expect(screen.getByText(/the file is incomplete/)).toBeTruthy();
    expect(host.calls.filter((name) => name === 'photo.measure')).toHaveLength(2);
  });

  it('are stopped, and what has come stays', async () => {
    vi.stubGlobal('fetch', (_: string, { signal }: { signal: AbortSignal }) => new Promise((_done, failed) => { signal.addEventListener('abort', () => failed(new Error('aborted'))); }));
    await show();
    await user.upload(screen.getByLabelText('Add photos', { selector: 'input' }), [file('a.jpg'), file('b.jpg'), file('c.jpg')]);
    await user.click(await screen.findByRole('button', { name: 'Stop' }));
    expect(await screen.findByText(/3 stopped/)).toBeTruthy();
  });

  it('of a whole folder leave out what is no picture', async () => {
    const sent: string[] = [];
    vi.stubGlobal('fetch', async (address: string) => { sent.push(new URL(address, 'http://x').searchParams.get('name')!); return answer({ ok: false, error: { code: 'forbidden' } }); });
    await show();
    await user.upload(screen.getByLabelText('Add a folder', { selector: 'input' }), [file('a.HEIC'), file('notes.txt'), file('b.tif'), file('.hidden.jpg')]);
    await screen.findByText(/2 files in the folder are no pictures/);
    await waitFor(() => expect(sent.toSorted()).toEqual(['a.HEIC', 'b.tif']));
  });

  it('are pasted anywhere on the reading, but not while text is typed', async () => {
    const given = vi.fn();
    vi.stubGlobal('fetch', async () => answer({ ok: false, error: { code: 'forbidden' } }));
    render(<><DropPhotos readingId={readingId} onGiven={given} /><input aria-label="a text" /></>);
    fireEvent.paste(screen.getByLabelText('a text'), { clipboardData: { files: [file('a.png')] } });
    expect(given).not.toHaveBeenCalled();
    fireEvent.paste(document.body, { clipboardData: { files: [file('a.png')] } });
    expect(given).toHaveBeenCalledOnce();
  });
});

describe('one photo', () => {
  it('shows its colours in numbers, and enters a value only when the person takes it; one step takes it back', async () => {
    add('one', { place: at(2) });
    await show('one');
    const row = screen.getByRole('row', { name: /^Nose/ });
    expect(row.textContent).toContain('72°');
    expect(row.textContent).toContain('19');
    expect(tip(2)).toBeUndefined();
    await user.click(screen.getByRole('button', { name: 'Take it: Nose colour light tan' }));
    expect(tip(2)).toEqual({ noseColour: 'light tan' });
    await user.click(document.body);
    await user.keyboard('{Control>}z{/Control}');
    await waitFor(() => expect(tip(2)).toBeUndefined());
  });

  it('lets the measuring count beside what was seen, by its belief, once the person says so; and no longer when it is pressed again', async () => {
    add('one', { place: at(2) });
    await show('one');
    const count = screen.getByRole('button', { name: 'Let it count: Nose colour light tan' });
    const found = () => useStore.getState().reading!.history.now.sheet.plugs.find(({ cylinder }) => cylinder === 2)?.photo;
    await user.click(count);
    expect(found()).toEqual([{ facet: 'noseColour', value: 'light tan', belief: 0.85 }]);
    expect(tip(2)).toBeUndefined();
    await user.click(count);
    expect(found()).toBeUndefined();
  });

  it('points out that it speaks against what was entered, and changes nothing by itself', async () => {
    add('one', { place: at(2) });
    useStore.getState().act({ type: 'tip', plug: '2', facet: 'noseColour', value: 'black' });
    await show('one');
    expect(screen.getByText(/You entered black/)).toBeTruthy();
    expect(tip(2)?.noseColour).toBe('black');
  });

  it('asks to be laid to a plug before a value can be taken', async () => {
    add('one');
    await show('one');
    expect(screen.queryByRole('button', { name: /^Take it/ })).toBeNull();
    expect(screen.getByText(/Lay the photo to a plug first/)).toBeTruthy();
  });

  it.each([['greyscale', /is grey/], ['cmyk', /made for print/], ['transparent', /partly transparent/]] as const)('says that a %s picture is not judged for colour', async (colour, words) => {
    add('one', { place: at(1), colour, measure: measure({ regions: {}, whiteReference: { kind: 'none' } }) });
    await show('one');
    expect(screen.getByText(words)).toBeTruthy();
    expect(screen.getByText(/4 %/)).toBeTruthy();
  });

  it('has its circles put right by keyboard, and measured anew once the keys rest', async () => {
    add('one', { place: at(1) });
    await show('one');
    await user.click(screen.getByRole('button', { name: 'Correct the circles' }));
    screen.getByRole('slider', { name: 'Nose' }).focus();
    await user.keyboard('{ArrowRight}');
    fireEvent.pointerMove(screen.getByRole('application', { name: /one\.jpg/ }), { clientX: 10, clientY: 10 });
    await user.keyboard('{ArrowRight}+');
    await waitFor(() => expect(host.photos.get('one')?.geometry?.nose).toBeDefined(), { timeout: 3000 });
    const { nose, bore } = host.photos.get('one')!.geometry!;
    expect(nose).toEqual({ x: 2080, y: 1500, r: 360 }); // twice 8 and half of 8 pixels of a screen that shows the picture at a fifth
    expect(bore).toEqual(measure().geometry.bore);
  });

  it('takes its white from the cross that the arrows move', async () => {
    add('one', { place: at(1) });
    await show('one');
    await user.click(screen.getByRole('button', { name: 'Grey card' }));
    screen.getByRole('application', { name: /one\.jpg/ }).focus();
    await user.keyboard('{Enter}{Enter}');
    await waitFor(() => expect(host.photos.get('one')?.white).toMatchObject({ kind: 'patch', taken: 'grey card', w: 120, h: 120 }));
  });

  it('gives its white to all photos of the reading under the same lamp', async () => {
    add('one', { place: at(1), white: { kind: 'patch', x: 1, y: 1, w: 100, h: 100 } });
    add('two', { place: at(2) });
    add('print', { place: at(3), colour: 'cmyk' });
    await show('one');
    await user.click(screen.getByRole('button', { name: /Same lamp: use it for the other 1 photo/ }));
    await waitFor(() => expect(host.photos.get('two')?.white).toEqual({ kind: 'photo', id: 'one' }));
    expect(host.photos.get('print')?.white).toBeNull();
  });

  it('is marked beside the picture with words', async () => {
    add('one', { place: at(1) });
    await show('one');
    await user.click(screen.getByRole('button', { name: 'Circle' }));
    screen.getByRole('application', { name: /one\.jpg/ }).focus();
    await user.keyboard('{Enter}{ArrowRight}{Enter}');
    const words = await screen.findByLabelText('Circle 1');
    expect(document.activeElement).toBe(words);
    await user.keyboard('a chip here{Enter}');
    await waitFor(() => expect(host.photos.get('one')?.annotations[0]).toMatchObject({ kind: 'circle', words: 'a chip here' }));
    await user.click(screen.getByRole('button', { name: 'Take away circle 1' }));
    await waitFor(() => expect(host.photos.get('one')?.annotations).toEqual([]));
  });
});
