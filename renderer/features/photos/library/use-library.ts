import { useCallback, useEffect, useRef, useState } from 'react';
import type { AppError, Input } from '../../../../shared/channels.ts';
import type { PhotoCard } from '../../../../shared/channels-photo.ts';
import { bridge } from '../../../app/bridge.ts';

export type LibraryFilter = Pick<Input<'photo.library'>, 'find' | 'view' | 'unplaced'>;

/** Photos are fetched so many at a time, when they come into view. */
const PAGE = 200;

export type PhotoLibrary = {
  /** Undefined until the host has answered. */
  readonly total: number | undefined;
  readonly problem: AppError | null;
  readonly cardAt: (index: number) => PhotoCard | undefined;
  /** Fetches what is missing between two places. */
  readonly need: (first: number, last: number) => void;
};

/** All photos that a filter lets through, of which only those that are looked at are fetched. */
export function useLibrary(filter: LibraryFilter): PhotoLibrary {
  const key = JSON.stringify(filter);
  const [pages, setPages] = useState<{ readonly key: string; readonly total: number; readonly cards: ReadonlyMap<number, readonly PhotoCard[]> }>();
  const [problem, setProblem] = useState<AppError | null>(null);
  const asked = useRef({ key: '', pages: new Set<number>() });
  const fetchPage = useCallback((page: number): void => {
    if (asked.current.key !== key) asked.current = { key, pages: new Set() };
    if (asked.current.pages.has(page)) return;
    asked.current.pages.add(page);
    void bridge['photo.library']({ ...(JSON.parse(key) as LibraryFilter), offset: page * PAGE, limit: PAGE }).then((reply) => {
      if (asked.current.key !== key) return;
      if (!reply.ok) return setProblem(reply.error);
      setProblem(null);
      setPages((before) => ({ key, total: reply.value.total, cards: new Map([...(before?.key === key ? before.cards : []), [page, reply.value.photos]]) }));
    });
  }, [key]);
  useEffect(() => fetchPage(0), [fetchPage]);
  const current = pages?.key === key ? pages : undefined;
  return {
    total: current?.total, problem,
    cardAt: (index) => current?.cards.get(Math.floor(index / PAGE))?.[index % PAGE],
    need: (first, last) => { for (let page = Math.floor(first / PAGE); page <= Math.floor(last / PAGE); page += 1) fetchPage(page); },
  };
}
