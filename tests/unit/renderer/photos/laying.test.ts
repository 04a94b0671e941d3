import { describe, expect, it } from 'vitest';
import { plugPlaces, type PlugPlace } from '../../../../core/domain/plugs.ts';
import { byCapture, evenShare, laidByName, laidInTurn, placeInName, type Layable } from '../../../../renderer/features/photos/lay-out/laying.ts';
import { cylinderKeys } from '../../../../renderer/features/photos/lay-out/keys.ts';
import { inOrder, laidTo, nextView, placeBeside, placeOfCylinder } from '../../../../renderer/features/photos/lay-out/steps.ts';
import { photo } from './photo.ts';

const four = plugPlaces({ use: 'road', cylinders: 4 });
const twin = plugPlaces({ use: 'aircraft', cylinders: 4, plugsPerCylinder: 2 });
const named = (name: string, takenAt: string | null = null): Layable => ({ id: name, name, takenAt, addedAt: '2026-03-14T09:00:00Z' });
const where = (place: PlugPlace | undefined): string | undefined => place && `${place.cylinder} ${place.position}`;

describe('photos taken in the order of the tray', () => {
  it('go one to a plug, the first to cylinder 1', () => {
    const laid = laidInTurn(['a', 'b', 'c', 'd'].map((name) => named(name)), four, 1);
    expect(laid.map(({ id, place, view }) => [id, place.cylinder, view])).toEqual([['a', 1, 'end-on'], ['b', 2, 'end-on'], ['c', 3, 'end-on'], ['d', 4, 'end-on']]);
  });

  it('go two to a plug when there are twice as many: end-on, then from the side', () => {
    const photos = Array.from({ length: 8 }, (_, i) => named(`${i}`));
    expect(evenShare(8, 4)).toBe(2);
    expect(laidInTurn(photos, four, 2).map(({ place, view }) => [place.cylinder, view]).slice(0, 3)).toEqual([[1, 'end-on'], [1, 'side'], [2, 'end-on']]);
  });

  it('are left over beyond the last plug', () => {
    expect(laidInTurn(Array.from({ length: 6 }, (_, i) => named(`${i}`)), four, 1)).toHaveLength(4);
    expect(evenShare(6, 4)).toBe(1);
  });

  it('are sorted by the camera’s clock, and those without one come last by name, 2 before 10', () => {
    const photos = [named('x10'), named('late', '2026-03-14T10:05:00'), named('x2'), named('early', '2026-03-14T10:01:00')];
    expect(photos.toSorted(byCapture).map(({ name }) => name)).toEqual(['early', 'late', 'x2', 'x10']);
  });
});

describe('the name of a file', () => {
  it.each([
    ['cyl3.jpg', '3 only'], ['Cylinder 2.HEIC', '2 only'], ['2026 plug-04 side.png', '4 only'], ['3.jpg', '3 only'],
    ['IMG_2034.jpg', undefined], ['IMG_0003.jpg', undefined], ['plug 7.jpg', undefined], ['1 and 2.jpg', undefined], ['holiday.jpg', undefined],
  ])('%s tells %s of four cylinders', (name, told) => { expect(where(placeInName(name, four))).toBe(told); });

  it.each([['3 upper.jpg', '3 upper'], ['cyl2_L.jpg', '2 lower'], ['4 top.png', '4 upper'], ['4.png', undefined]])('%s tells %s with two plugs in each', (name, told) => {
    expect(where(placeInName(name, twin))).toBe(told);
  });

  it('lays the photo where it says, from the side it says; photos whose name says nothing stay', () => {
    expect(laidByName([named('cyl3-side.jpg'), named('IMG_2034.jpg')], four, 1)).toEqual([{ id: 'cyl3-side.jpg', place: four[2], view: 'side' }]);
  });

  it('lays by order of names where none says a plug', () => {
    expect(laidByName([named('IMG_2035.jpg'), named('IMG_2034.jpg')], four, 1).map(({ id, place }) => [id, place.cylinder])).toEqual([['IMG_2034.jpg', 1], ['IMG_2035.jpg', 2]]);
  });
});

describe('a photo laid by hand', () => {
  const at2 = photo({ id: 'b', place: { cylinder: 2, position: 'only' }, order: 0 });
  const loose = photo({ id: 'a', place: null });

  it('comes after those that lie at the plug already', () => {
    expect(laidTo(loose, { cylinder: 2, position: 'only' }, [loose, at2])).toMatchObject({ id: 'a', order: 1 });
    expect(inOrder([{ id: 'a', place: { cylinder: 2, position: 'only' }, view: 'side' }], [at2])[0]).toMatchObject({ order: 1, view: 'side' });
  });

  it('goes to the plug beside, from no plug to the first and from the first back to none', () => {
    expect(placeBeside(loose, four, 1)).toEqual(four[0]);
    expect(placeBeside(photo({ place: { cylinder: 1, position: 'only' } }), four, -1)).toBeNull();
    expect(placeBeside(at2, four, 1)).toEqual(four[2]);
    expect(placeBeside(photo({ place: { cylinder: 4, position: 'only' } }), four, 1)).toBeUndefined();
  });

  it('goes to the other plug of a cylinder when its number is pressed again', () => {
    const first = placeOfCylinder(3, loose, twin);
    expect(where(first)).toBe('3 upper');
    expect(where(placeOfCylinder(3, photo({ place: first ?? null }), twin))).toBe('3 lower');
  });

  it('is seen end-on, then from the side, then the strap, then end-on again', () => {
    expect(nextView(nextView(nextView('end-on')))).toBe('end-on');
  });

  it('reads 1 and 2 typed at once as cylinder 12 where there is one, and as 2 where there is none or after a pause', () => {
    const radial = cylinderKeys();
    expect([radial('1', 18, 0), radial('2', 18, 300)]).toEqual([1, 12]);
    const inline = cylinderKeys();
    expect([inline('1', 4, 0), inline('2', 4, 300)]).toEqual([1, 2]);
    const slow = cylinderKeys();
    expect([slow('1', 18, 0), slow('2', 18, 900)]).toEqual([1, 2]);
  });
});
