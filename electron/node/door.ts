import { CHANNELS, type Channel } from '../../shared/channel-names.ts';
import { channels, type AppError, type Handlers } from '../../shared/channels.ts';
import { problemsOf } from '../../shared/formats/strict.ts';
import { err, type Result } from '../../shared/result.ts';
import { appErrorOf } from './storage/failure.ts';

export type Door = {
  /** Answers one call of the page. `trusted`: the host made sure that our own page is asking. Never throws. */
  readonly call: (channel: string, payload: unknown, trusted: boolean) => Promise<Result<unknown, AppError>>;
  /** Resolves when every call taken so far is answered. */
  readonly quiet: () => Promise<void>;
};

const isChannel = (name: string): name is Channel => (CHANNELS as readonly string[]).includes(name);

/** These take long and change nothing that other calls stand on; the others do not wait for them. */
const OUT_OF_TURN: readonly Channel[] = ['photo.measure', 'photo.check'];

/** The one way from a page to the handlers: the sender is known, the payload is parsed, the answer is a value. Calls are answered in turn. */
export function openDoor(handlers: Handlers, log: (line: string) => void): Door {
  async function answer(channel: Channel, payload: unknown): Promise<Result<unknown, AppError>> {
    try {
      const input = channels[channel].input.safeParse(payload);
      if (!input.success) return err({ code: 'bad-request', problems: problemsOf(input.error) });
      return await (handlers[channel] as (input: unknown) => Promise<Result<unknown, AppError>>)(input.data);
    } catch (error) {
      log(`${channel}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}`);
      return err(appErrorOf(error) ?? { code: 'internal', message: `Corenose made a mistake in "${channel}" (${error instanceof Error ? error.message : String(error)}). What was saved before is safe.` });
    }
  }

  let last: Promise<unknown> = Promise.resolve();
  const aside = new Set<Promise<unknown>>();
  return {
    call(channel, payload, trusted) {
      if (!trusted) return Promise.resolve(err({ code: 'forbidden' }));
      if (!isChannel(channel)) return Promise.resolve(err({ code: 'not-found', what: 'channel' }));
      const answered = last.then(() => answer(channel, payload));
      if (OUT_OF_TURN.includes(channel)) {
        aside.add(answered);
        void answered.finally(() => aside.delete(answered));
      } else last = answered;
      return answered;
    },
    quiet: async () => { await Promise.all([last, ...aside]); },
  };
}
