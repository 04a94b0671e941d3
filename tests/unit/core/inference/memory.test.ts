import { beforeEach, describe, expect, it } from 'vitest';
import { framing, type Shape } from '../../../../core/inference/cylinder.ts';
import { evidenceOf, type CylinderEvidence, type PlugEvidence } from '../../../../core/inference/evidence.ts';
import { foundUnder } from '../../../../core/inference/found.ts';
import { memoryFor, type Memory } from '../../../../core/inference/memory.ts';
import { networkFor } from '../../../../core/inference/network.ts';
import { dampingFor } from '../../../../core/inference/symptoms.ts';
import type { CylinderCheck, ReadingSheet, Tip } from '../../../../shared/formats/reading-sheet.v1.ts';
import { sheetOf } from './sheet-of.ts';
import { cause, condition, knowledge, makes, shows } from './small-knowledge.ts';

const grounds = { because: 'made up for a test', source: 'common practice' };
const kb = knowledge(
  [condition('soot', { shows: [shows('deposit', 'dry soot', 'usually'), shows('noseColour', 'black', 'often')], gives: [{ symptom: 'misfire', strength: 'often', ...grounds }] })],
  [
    cause('gap', { scope: 'plug', makes: [makes('soot', 'often')], gives: [{ symptom: 'misfire', strength: 'usually', ...grounds }] }),
    cause('valve', { scope: 'cylinder', shows: [{ finding: 'spark', is: 'weak', strength: 'often', ...grounds }] }),
  ],
);
type Given = { readonly tip?: Tip; readonly check?: Omit<CylinderCheck, 'cylinder'>; readonly symptoms?: ReadingSheet['symptoms'] };
/** Cylinder 1 or 2 of an engine, so entered. */
const cylinder = ({ tip, check, symptoms }: Given, number = 1): CylinderEvidence => evidenceOf(sheetOf({
  plugs: [{ cylinder: number, ...(tip && { tip }) } as ReadingSheet['plugs'][number]], symptoms: symptoms ?? [],
  cylinderChecks: check === undefined ? [] : [{ cylinder: number, ...check }],
})).cylinders[number - 1]!;

const sooty: Tip = { deposit: 'dry soot', noseColour: 'black' };
const [calm, quiet] = [dampingFor(kb, []), dampingFor(kb, ['misfire'])];
let memory: Memory;
let shape: Shape;
let other: Shape;
beforeEach(() => {
  memory = memoryFor(kb.conditions);
  const shapeOf = (number: number, given: Given): Shape => {
    const evidence = evidenceOf(sheetOf({ cylinderChecks: given.check ? [{ cylinder: number, ...given.check }] : [] }));
    return framing(kb.conditions)([], evidence.cylinders[number - 1]!, networkFor(kb, evidence).local.get(number)!).shape;
  };
  [shape, other] = [shapeOf(1, { check: { spark: 'weak' } }), shapeOf(1, {})];
});

describe('how a cylinder looks', () => {
  it('is the same where the same was seen, found and felt, at whichever cylinder', () => {
    const given: Given = { tip: sooty, check: { spark: 'weak' } };
    expect(memory.look(cylinder(given, 2))).toBe(memory.look(cylinder(given, 1)));
    const two = cylinder({ symptoms: [{ what: 'misfire', cylinder: 2 }] }, 2);
    expect(memory.look(two)).toBe(memory.look(cylinder({ symptoms: [{ what: 'misfire', cylinder: 1 }] })));
  });

  it.each<[string, Given]>([
    ['nothing seen', { check: { spark: 'weak' } }],
    ['a finding less', { tip: { deposit: 'dry soot' }, check: { spark: 'weak' } }],
    ['another value', { tip: { ...sooty, deposit: 'wet oil' }, check: { spark: 'weak' } }],
    ['the other finding seen', { tip: { noseColour: 'black' }, check: { spark: 'weak' } }],
    ['a doubt', { tip: { ...sooty, unsure: ['deposit'] }, check: { spark: 'weak' } }],
    ['nothing found', { tip: sooty }],
    ['something else found', { tip: sooty, check: { spark: 'strong' } }],
    ['something felt', { tip: sooty, check: { spark: 'weak' }, symptoms: [{ what: 'misfire', cylinder: 1 }] }],
  ])('is another with %s', (_what, given) => {
    expect(memory.look(cylinder(given))).not.toBe(memory.look(cylinder({ tip: sooty, check: { spark: 'weak' } })));
  });

  it('is another where something was left aside than where it was not seen', () => {
    const whole = cylinder({ tip: sooty });
    const seen = whole.plugs[0]!.seen.slice(0, 1);
    const leftAside = (from: PlugEvidence['seen']): CylinderEvidence => ({ ...whole, plugs: [{ ...whole.plugs[0]!, seen, from }] });
    const [aside, unseen] = [leftAside(whole.plugs[0]!.seen), { ...whole, plugs: [{ ...whole.plugs[0]!, seen }] }];
    expect(memory.look(aside)).not.toBe(memory.look(unseen));
    expect(memory.look(leftAside([...whole.plugs[0]!.seen, ...cylinder({ tip: { specks: 'dark pepper' } }).plugs[0]!.seen]))).not.toBe(memory.look(aside));
    expect(memory.look(leftAside(seen))).toBe(memory.look(unseen));
  });

  it('is never taken for another, whatever was left aside before', () => {
    const whole = cylinder({ tip: { ...sooty, specks: 'dark pepper' } });
    const [plug] = whole.plugs as [PlugEvidence];
    const one = plug.seen.map((_, i) => plug.seen.filter((__, j) => j === i));
    const aside = one.map((seen): CylinderEvidence => ({ ...whole, plugs: [{ ...plug, seen, from: plug.seen }] }));
    const apart = one.map((seen): CylinderEvidence => ({ ...whole, plugs: [{ ...plug, seen }] }));
    const looks = [...aside, whole, ...apart].map((each) => memory.look(each));
    expect(new Set(looks).size).toBe(7);
  });
});

describe('a plug', () => {
  const plugOf = (tip: Tip, number = 1): PlugEvidence => cylinder({ tip }, number).plugs[0]!;

  it('is worked out once for plugs that look alike and stand alike', () => {
    expect(memory.plug(shape, 0, plugOf(sooty, 2), calm)).toBe(memory.plug(shape, 0, plugOf(sooty), calm));
  });

  it('is worked out anew where it looks otherwise, stands otherwise, or other symptoms are taken as absent', () => {
    const first = memory.plug(shape, 0, plugOf(sooty), calm);
    expect(memory.plug(shape, 0, plugOf({ deposit: 'dry soot' }), calm)).not.toBe(first);
    expect(memory.plug(other, 0, plugOf(sooty), calm)).not.toBe(first);
    expect(memory.plug(shape, 0, plugOf(sooty), quiet)).not.toBe(first);
  });

  it('has its own causes as quiet as the symptoms taken as absent ask for', () => {
    expect(memory.plug(shape, 0, plugOf(sooty), quiet).own.map((one) => one.quiet)).toEqual([1 - 0.7]);
    expect(memory.plug(shape, 0, plugOf(sooty), calm).own.map((one) => one.quiet)).toEqual([1]);
  });

  it('of which something is left aside says what it would say had that not been seen, up to a factor', () => {
    const whole = plugOf(sooty);
    const seen = whole.seen.slice(0, 1);
    const [aside, unseen] = [{ ...whole, seen, from: whole.seen }, { ...whole, seen }].map((plug) => memory.plug(shape, 0, plug, quiet).sum);
    const scale = aside!.fit.none / unseen!.fit.none;
    expect(aside!.fit.single[0]! / unseen!.fit.single[0]!).toBeCloseTo(scale, 12);
    expect(aside!.total / unseen!.total).toBeCloseTo(scale, 12);
    const { fit } = memory.plug(shape, 0, whole, quiet).sum;
    expect(fit.single[0]! / fit.none).not.toBeCloseTo(aside!.fit.single[0]! / aside!.fit.none, 6);
  });
});

describe('what was found on a cylinder', () => {
  it('is weighed once where the same was found, and anew where not', () => {
    const [weak, again, strong] = [cylinder({ check: { spark: 'weak' } }), cylinder({ check: { spark: 'weak' } }, 2), cylinder({ check: { spark: 'strong' } })];
    const found = memory.found(shape, weak.seen);
    expect(memory.found(shape, again.seen)).toBe(found);
    expect(memory.found(shape, strong.seen)).not.toBe(found);
    expect(memory.found(other, weak.seen)).not.toBe(found);
    expect(foundUnder(found, 0, -1)).toBeGreaterThan(foundUnder(found, -1, -1));
    expect(foundUnder(memory.found(shape, strong.seen), 0, -1)).toBeLessThan(foundUnder(memory.found(shape, strong.seen), -1, -1));
  });
});

describe('the weights of a cylinder’s states', () => {
  it('are worked out once for the same symptoms taken as absent, of all and of its own', () => {
    const weights = memory.weights(shape, quiet, calm);
    expect(memory.weights(shape, quiet, calm)).toBe(weights);
    expect(memory.weights(shape, quiet, quiet)).not.toBe(weights);
    expect(memory.weights(shape, calm, calm)).not.toBe(weights);
    expect(memory.weights(other, quiet, calm)).not.toBe(weights);
    // The valve, the only cause that is switched here: prior 0.04.
    expect(weights.states[0]).toBeCloseTo(0.04 / 0.96, 12);
  });
});
