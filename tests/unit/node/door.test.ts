import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openDoor } from '../../../electron/node/door.ts';
import { CHANNELS } from '../../../shared/channel-names.ts';
import { channels, type Handlers } from '../../../shared/channels.ts';
import { ok } from '../../../shared/result.ts';
import { testProgram } from '../../fixtures/test-program.ts';

const quiet = (): void => undefined;
const allAnswering = (answer: (input: unknown) => Promise<unknown>): Handlers =>
  Object.fromEntries(CHANNELS.map((name) => [name, answer])) as unknown as Handlers;
const anything = fc.anything({ withNullPrototype: true, withBigInt: true, withDate: true, withMap: true, withTypedArray: true });

describe('the door', () => {
  it('lets nobody in that the host does not vouch for, and runs nothing for them', async () => {
    let ran = 0;
    const door = openDoor(allAnswering(async () => { ran += 1; return ok(null); }), quiet);
    for (const name of CHANNELS) expect(await door.call(name, null, false)).toEqual({ ok: false, error: { code: 'forbidden' } });
    expect(ran).toBe(0);
  });

  it.each(['', 'engine', 'engine.list ', '__proto__', 'constructor', 'toString', 'hasOwnProperty'])('knows no channel "%s"', async (name) => {
    const door = openDoor(allAnswering(async () => ok(null)), quiet);
    expect(await door.call(name, null, true)).toEqual({ ok: false, error: { code: 'not-found', what: 'channel' } });
  });

  it.each(CHANNELS)('answers rubbish on %s with its problems and runs nothing', async (name) => {
    const ran: unknown[] = [];
    const door = openDoor(allAnswering(async (input) => { ran.push(input); return ok(null); }), quiet);
    await fc.assert(fc.asyncProperty(anything, async (rubbish) => {
      ran.length = 0;
      const answer = await door.call(name, rubbish, true);
      if (channels[name].input.safeParse(rubbish).success) return;
      expect(answer).toMatchObject({ ok: false, error: { code: 'bad-request' } });
      expect(ran).toEqual([]);
    }), { numRuns: 200 });
  });

  it.each(CHANNELS)('takes on %s no field that its channel does not name', async (name) => {
    const { handlers } = await testProgram();
    const answer = await openDoor(handlers, quiet).call(name, { path: '/etc/passwd' }, true);
    expect(answer).toMatchObject({ ok: false, error: { code: 'bad-request' } });
  });

  it('turns a bug into an answer and a line for the log', async () => {
    const lines: string[] = [];
    const door = openDoor(allAnswering(async () => { throw new Error('division by cucumber'); }), (line) => lines.push(line));
    expect(await door.call('engine.list', null, true)).toMatchObject({ ok: false, error: { code: 'internal', message: expect.stringContaining('division by cucumber') as string } });
    expect(lines.join()).toContain('engine.list: Error: division by cucumber');
  });

  it('turns a full disk into words that say what to do', async () => {
    const door = openDoor(allAnswering(async () => { throw Object.assign(new Error('database or disk is full'), { errcode: 13 }); }), quiet);
    expect(await door.call('engine.list', null, true)).toMatchObject({ ok: false, error: { code: 'disk-full' } });
  });

  it('answers calls in the order in which they came', async () => {
    const order: string[] = [];
    const slow = async (): Promise<unknown> => { await new Promise((done) => { setTimeout(done, 20); }); order.push('slow'); return ok(null); };
    const handlers = { ...allAnswering(async () => { order.push('quick'); return ok([]); }), 'app.info': slow } as unknown as Handlers;
    const door = openDoor(handlers, quiet);
    await Promise.all([door.call('app.info', null, true), door.call('engine.list', null, true)]);
    expect(order).toEqual(['slow', 'quick']);
  });
});

describe('the channels', () => {
  it('have each one name, and none takes a path of the file system', () => {
    expect(Object.keys(channels).sort()).toEqual([...CHANNELS].sort());
    for (const name of CHANNELS) {
      const fields = [...JSON.stringify(z.toJSONSchema(channels[name].input)).matchAll(/"(\w+)":\{/g)].map(([, field]) => field);
      expect(fields.filter((field) => /^(path|file|folder|directory|url)$/i.test(field ?? ''))).toEqual([]);
    }
  });
});
