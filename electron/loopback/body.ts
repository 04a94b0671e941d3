import type { IncomingMessage } from 'node:http';
import { err, ok, type Result } from '../../shared/result.ts';

/** A sheet's text may have 8 million characters; as JSON in UTF-8 that is at most three times as much, nearly always far less. */
export const BODY_LIMIT_BYTES = 24_000_000;

export type BodyProblem = { readonly status: 400 | 413 | 415; readonly message: string };

/** Reads the JSON a call carries; stops reading at the limit. */
export async function readBody(request: IncomingMessage): Promise<Result<unknown, BodyProblem>> {
  if (request.headers['content-type']?.split(';')[0]?.trim() !== 'application/json') return err({ status: 415, message: 'a call carries application/json' });
  if (Number(request.headers['content-length'] ?? 0) > BODY_LIMIT_BYTES) return err(tooLarge);
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > BODY_LIMIT_BYTES) return err(tooLarge);
    chunks.push(chunk);
  }
  try {
    return ok(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks))) as unknown);
  } catch {
    return err({ status: 400, message: 'the call is not JSON in UTF-8' });
  }
}

const tooLarge: BodyProblem = { status: 413, message: `the call is too large; at most ${BODY_LIMIT_BYTES / 1_000_000} MB` };
