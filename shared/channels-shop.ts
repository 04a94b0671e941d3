import { z } from 'zod';
import { shopLine } from './formats/shop-lines.v1.ts';
import { record, text } from './formats/strict.ts';

const nothing = z.null();
const { id, ...said } = shopLine.shape;

/** The lines that this workshop added to the knowledge. Every change is held against the rules of the knowledge; what breaks one is refused. */
export const shopChannels = {
  'shop.list': { input: nothing, output: z.array(shopLine) },
  /** `id`: null adds a line. */
  'shop.save': { input: record({ id: id.nullable(), ...said }), output: shopLine },
  'shop.remove': { input: record({ id }), output: nothing },
  'shop.restore': { input: record({ id }), output: shopLine },
  /** All lines of a file or none. `known`: how many were here already; those stay as they are here. */
  'shop.import': {
    input: record({ text: z.string().max(2_000_000, { error: 'the file is too large; at most 2 MB' }) }),
    output: record({ added: z.number().int(), known: z.number().int() }),
  },
  'shop.export': { input: nothing, output: record({ fileName: text(200), text: z.string() }) },
} as const;
