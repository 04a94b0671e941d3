import { describe, expect, it } from 'vitest';
import { FACET_NAMES, TIP_FACETS } from '../../../../shared/vocabulary/tip.ts';
import { describeTip, TIP_PARTS } from '../../../../renderer/ui/drawn-tip/index.ts';
import { tray } from '../../../../renderer/text/en/tray.ts';

const said = (tip: Parameters<typeof describeTip>[0]): string => describeTip(tip, tray.tip);

describe('the drawing in words', () => {
  it('says of an empty tip that nothing was observed, not that it is clean', () => {
    expect(said({})).toBe('Nothing observed yet; line work only.');
  });

  it('tells the parts in the order one looks at them, and what was not looked at', () => {
    expect(said({ centreElectrode: 'rounded', shellRim: 'even soot', noseColour: 'light tan', deposit: 'dry soot', coverage: 'full' })).toBe(
      'Rim: face of the shell even soot. Nose: colour light tan, deposit dry soot, coverage full. Electrodes: centre electrode rounded. Not observed: outside.',
    );
  });

  it('carries the doubt and the first impression', () => {
    expect(said({ overall: 'looks normal' })).toBe('At a glance: looks normal. Not observed: rim, nose, electrodes and outside.');
    expect(said({ deposit: 'glaze', unsure: ['deposit'] })).toContain('deposit glaze (unsure)');
  });

  it('names every value of every facet', () => {
    for (const facet of FACET_NAMES) for (const value of TIP_FACETS[facet]) expect(said({ [facet]: value })).toContain(` ${value}.`);
  });

  it('puts every facet into exactly one part', () => {
    expect(Object.values(TIP_PARTS).flat().sort()).toEqual([...FACET_NAMES].sort());
  });
});
