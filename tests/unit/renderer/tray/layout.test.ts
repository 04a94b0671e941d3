import { describe, expect, it } from 'vitest';
import { enginePlan } from '../../../../core/domain/engine-plan.ts';
import { arrange } from '../../../../renderer/features/tray/arrangement.ts';
import { cylinderLabels } from '../../../../renderer/features/tray/labels.ts';
import { stationLayout } from '../../../../renderer/features/tray/layout.ts';
import { nearest } from '../../../../renderer/features/tray/nearest.ts';
import { LAYOUTS } from '../../../../shared/vocabulary/engine.ts';
import type { Engine } from '../../../../shared/formats/engine.ts';

/** The station at 1280x800, under the head and the rail of a reading and above its line of keys. */
const ROOM = { width: 1280, height: 660 };
/** Target size of a place; WCAG 2.2 (2.5.8) asks for 24, a gloved hand for more. */
const LEAST = 40;

const engines: readonly Engine[] = Array.from({ length: 18 }, (_, i) => i + 1).flatMap((cylinders) =>
  LAYOUTS.filter((layout) => (layout === 'single') === (cylinders === 1)).flatMap((layout) => ([1, 2] as const).map((plugsPerCylinder): Engine => ({ use: 'road', cylinders, layout, plugsPerCylinder }))));

describe('the tray at 1280x800', () => {
  it.each(engines.map((engine) => [`${engine.cylinders} ${engine.layout}, ${engine.plugsPerCylinder} a cylinder`, engine] as const))('holds %s without scrolling', (_, engine) => {
    const plan = enginePlan(engine);
    const { scale, tray } = stationLayout(plan, ROOM);
    expect(scale).toBeGreaterThanOrEqual(LEAST);
    expect(plan.width * scale).toBeLessThanOrEqual(tray.width);
    expect(plan.height * scale).toBeLessThanOrEqual(tray.height);
  });

  it.each(engines.map((engine) => [`${engine.cylinders} ${engine.layout}`, engine] as const))('numbers the cylinders of %s clear of the plugs', (_, engine) => {
    const plan = enginePlan(engine);
    for (const label of cylinderLabels(plan)) for (const plug of plan.places) expect(Math.hypot(label.x - plug.x, label.y - plug.y)).toBeGreaterThan(0.6);
  });
});

describe('walking the tray', () => {
  it.each(engines.map((engine) => [`${engine.cylinders} ${engine.layout}, ${engine.plugsPerCylinder} a cylinder`, engine] as const))('leaves no plug of %s out of reach of the arrows', (_, engine) => {
    const { places } = enginePlan(engine);
    const reached = new Set([places[0]]);
    for (const place of reached) for (const way of ['left', 'right', 'up', 'down'] as const) { const next = place && nearest(place, places, way); if (next) reached.add(next); }
    expect(reached.size).toBe(places.length);
  });
});

describe('the large drawing', () => {
  it('never needs more room than it has, from a narrow column to a wide band', () => {
    for (const [width, height] of [[260, 530], [426, 290], [475, 430], [725, 600], [475, 180]] as const) {
      const { lie, end, side } = arrange({ width, height });
      expect(lie === 'beside' ? end + side : Math.max(end, side)).toBeLessThanOrEqual(width);
      expect(lie === 'beside' ? end : end + (side * 5) / 11).toBeLessThanOrEqual(height + 1);
    }
  });
});
