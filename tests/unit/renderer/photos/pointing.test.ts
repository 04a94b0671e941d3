import { describe, expect, it } from 'vitest';
import { boxBetween, whiteOf } from '../../../../renderer/features/photos/light/white-tool.tsx';
import { markOf } from '../../../../renderer/features/photos/marks/drawing.tsx';
import { carriedOver, modelFor, moved, partsOf, usualParts, widened } from '../../../../renderer/features/photos/parts/parts.ts';
import { measure, photo } from './photo.ts';

const picture = { width: 4000, height: 3000 };

describe('the white that is pointed out', () => {
  it('is an area around a click, 3 % of the longer side, and never beyond the picture', () => {
    expect(boxBetween({ x: 2000, y: 1500 }, { x: 2000, y: 1500 }, picture)).toEqual({ x: 1940, y: 1440, w: 120, h: 120 });
    expect(boxBetween({ x: 0, y: 3000 }, { x: 0, y: 3000 }, picture)).toEqual({ x: 0, y: 2940, w: 60, h: 60 });
  });

  it('is the box that is drawn, whichever corner it is begun at', () => {
    expect(boxBetween({ x: 500, y: 400 }, { x: 100, y: 100 }, picture)).toEqual({ x: 100, y: 100, w: 400, h: 300 });
  });

  it('is called what the person says it is', () => {
    const box = { x: 1, y: 2, w: 30, h: 40 };
    expect([whiteOf('grey card', box), whiteOf('white paper', box), whiteOf('bare shell', box)])
      .toEqual([{ kind: 'patch', taken: 'grey card', ...box }, { kind: 'patch', taken: 'white paper', ...box }, { kind: 'metal', ...box }]);
  });
});

describe('a mark', () => {
  it('points where the stroke ends', () => {
    expect(markOf('arrow', { x: 1, y: 2 }, { x: 30, y: 40 }, 4000)).toEqual({ kind: 'arrow', from: { x: 1, y: 2 }, to: { x: 30, y: 40 }, words: '' });
  });
  it('grows from where the circle is begun', () => {
    expect(markOf('circle', { x: 10, y: 10 }, { x: 13, y: 14 }, 4000)).toEqual({ kind: 'circle', x: 10, y: 10, r: 5, words: '' });
  });
  it('is of a size that can be seen when it is made by a click', () => {
    expect(markOf('circle', { x: 10, y: 10 }, { x: 10, y: 10 }, 4000)).toMatchObject({ r: 160 });
    expect(markOf('arrow', { x: 500, y: 500 }, { x: 500, y: 500 }, 4000)).toMatchObject({ to: { x: 500, y: 500 }, from: { x: 660, y: 340 } });
  });
});

describe('the parts of a plug', () => {
  const parts = usualParts(picture);

  it('are moved and widened one by one', () => {
    expect(moved(parts, 'nose', 5, -3).nose).toEqual({ ...parts.nose, x: 2005, y: 1497 });
    expect(moved(parts, 'nose', 5, -3).bore).toEqual(parts.bore);
    expect(moved(parts, 'end', 5, 0).groundElectrode).toMatchObject({ foot: parts.groundElectrode!.foot, end: { x: parts.groundElectrode!.end.x + 5 } });
    expect(widened(parts, 'shell', 10).shell!.r).toBe(parts.shell!.r + 10);
    expect(widened(parts, 'shell', -1e6).shell!.r).toBeGreaterThan(0);
  });

  it('count as the person put them right, and as found where nobody did', () => {
    const nose = { x: 1, y: 2, r: 3 };
    expect(partsOf(photo({ geometry: { nose } }))).toMatchObject({ nose, bore: measure().geometry.bore });
  });

  it('stay in the same place of the picture when they are carried over to one of another size', () => {
    const over = carriedOver(parts, picture, { width: 2000, height: 1500 });
    expect(over.shell).toEqual({ x: 1000, y: 750, r: parts.shell!.r / 2 });
    expect(carriedOver(over, { width: 2000, height: 1500 }, picture)).toEqual(parts);
  });

  it('are offered from the photo that was put right last before, where this one’s are not certain', () => {
    const doubtful = photo({ id: 'c', measure: measure({ geometry: { confidence: 0.5 } }) });
    const [first, second] = [photo({ id: 'a', geometry: parts }), photo({ id: 'b', geometry: parts })];
    expect(modelFor(doubtful, [first, second, doubtful])?.id).toBe('b');
    expect(modelFor(photo({ id: 'c' }), [first, second])).toBeUndefined();
    expect(modelFor(doubtful, [photo({ id: 'a', view: 'side', geometry: parts }), doubtful])).toBeUndefined();
  });
});
