import { describe, expect, it } from 'vitest';
import { KNOWLEDGE } from '../../../../core/knowledge/index.ts';
import { inUnits } from '../../../../renderer/ui/in-units.ts';
import { stringsIn } from '../text/raw-texts.ts';

/*
 * Worked by hand with 1 in = 25.4 mm and 1 mi = 1.609344 km exactly, 1 psi = 6.894757 kPa, 1 lb-ft = 1.355818 N·m (NIST SP 811, appendix B),
 * rounded to the digits that the metric number has, two at least.
 */
describe('a sentence of the findings, in inches', () => {
  it.each([
    ['Cylinder 3: compression 1150 kPa, best 1170 kPa', 'Cylinder 3: compression 167 psi, best 170 psi'],
    ['Piston exactly at top, 345 to 690 kPa.', 'Piston exactly at top, 50 to 100 psi.'],
    ['gap 0.71 mm (new 0.7 mm)', 'gap 0.028 in (new 0.028 in)'],
    ['tip 650 to 780 °C, in its window', 'tip 1202 to 1436 °F, in its window'],
    ['removal torque 18 N·m', 'removal torque 13 lb-ft'],
    ['nickel 16 000 to 48 000 km, platinum', 'nickel 9900 to 30,000 mi, platinum'],
    ['3.4 kPa less for each 305 m.', '0.49 psi less for each 1000 ft.'],
    ['500/550 kPa held', '73/80 psi held'],
  ])('%s', (metric, inch) => { expect(inUnits(metric, 'inch')).toBe(inch); });

  it.each(['insulation 4 MΩ', 'lambda 0.9', '40 mg', 'about 10 min', 'M14x1.25', '18 kPa/s'])('leaves %s as it is', (sentence) => {
    expect(inUnits(sentence, 'inch')).toBe(sentence);
  });

  it('stays word for word as it was told to who works in metric units', () => {
    expect(inUnits('gap 0.71 mm', 'metric')).toBe('gap 0.71 mm');
  });

  it('leaves no metric amount in all that the knowledge says', () => {
    const said = stringsIn({ ...KNOWLEDGE, sources: [] }).map((sentence) => inUnits(sentence, 'inch'));
    expect(said.filter((sentence) => /\d\s?(kPa|mm|°C|N·m|km)\b/u.test(sentence))).toEqual([]);
  });
});
