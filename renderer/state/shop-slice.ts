import { KNOWLEDGE } from '../../core/knowledge/index.ts';
import { withShopLines, type Taught } from '../../core/shop-lines/with-shop-lines.ts';
import type { AppError, Input, Output } from '../../shared/channels.ts';
import type { ShopLine } from '../../shared/formats/shop-lines.v1.ts';
import type { Result } from '../../shared/result.ts';
import { bridge } from '../app/bridge.ts';
import type { SliceCreator } from './store.ts';

export type ShopSlice = {
  /** The lines that this workshop added to the knowledge, in the order in which they were added. */
  readonly shopLines: readonly ShopLine[];
  /** The program's knowledge with those of them that count. */
  readonly taught: Taught;
  readonly loadShopLines: () => Promise<AppError | null>;
  readonly saveShopLine: (line: Input<'shop.save'>) => Promise<AppError | null>;
  readonly removeShopLine: (id: string) => Promise<AppError | null>;
  readonly restoreShopLine: (id: string) => Promise<AppError | null>;
  readonly importShopLines: (text: string) => Promise<Result<Output<'shop.import'>, AppError>>;
};

export const createShopSlice: SliceCreator<ShopSlice> = (set, get) => {
  const load = async (): Promise<AppError | null> => {
    const reply = await bridge['shop.list'](null);
    const shopLines = reply.ok ? reply.value : [];
    set({ shopLines, taught: withShopLines(KNOWLEDGE, shopLines) });
    return reply.ok ? null : reply.error;
  };
  /** The open reading is judged by the new lines at once. */
  const changed = async (): Promise<AppError | null> => {
    const error = await load();
    get().judgeAnew();
    return error;
  };
  const after = async (reply: Promise<Result<unknown, AppError>>): Promise<AppError | null> => {
    const done = await reply;
    return done.ok ? changed() : done.error;
  };
  return {
    shopLines: [],
    taught: withShopLines(KNOWLEDGE, []),
    loadShopLines: load,
    saveShopLine: (line) => after(bridge['shop.save'](line)),
    removeShopLine: (id) => after(bridge['shop.remove']({ id })),
    restoreShopLine: (id) => after(bridge['shop.restore']({ id })),
    importShopLines: async (text) => {
      const reply = await bridge['shop.import']({ text });
      if (reply.ok) await changed();
      return reply;
    },
  };
};
