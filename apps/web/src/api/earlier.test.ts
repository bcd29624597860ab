import { listLots } from '@larderbook/contracts';
import { InfiniteQueryObserver, QueryClient } from '@tanstack/react-query';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { earlier, onceEach } from './earlier';
import { refreshAfter } from './refresh-after';

type Row = { lotId: string; startedAt: string; standing: string };
const reading = {
  rowsOf: (reply: unknown) => (reply as { lots: Row[] }).lots,
  idOf: ({ lotId }: Row) => lotId,
  at: ({ startedAt }: Row) => startedAt,
};

/** The lots of a shop, newest first, two at a time, as its server lists them. */
let lots: Row[];
beforeEach(() => {
  lots = [5, 4, 3, 2, 1].map((day) => ({ lotId: `L-${day}`, startedAt: `2026-03-0${day}`, standing: 'cleared' }));
  vi.stubGlobal('localStorage', { getItem: () => 'en' });
  vi.stubGlobal('fetch', async (url: string) => {
    const before = new URL(url, 'http://shop').searchParams.get('before') ?? '9';
    const left = lots.filter(({ startedAt }) => startedAt <= before);
    return new Response(JSON.stringify({ lots: left.slice(0, 2), more: left.length > 2 }), {
      headers: { 'content-type': 'application/json' },
    });
  });
});
afterEach(() => void vi.unstubAllGlobals());

/** Any reply is read: what a lot looks like is of no matter here. */
const route = { ...listLots, returns: { parse: (reply: unknown) => reply } } as unknown as typeof listLots;

test('what changes on another tablet shows among the earlier ones too, and a new one on top', async () => {
  const queries = new QueryClient();
  const list = new InfiniteQueryObserver(queries, earlier(route, { standing: 'all' }, reading));
  const stop = list.subscribe(() => undefined);
  await list.refetch();
  await list.fetchNextPage();
  const shown = () => onceEach<typeof listLots, Row>(list.getCurrentResult().data ?? { pages: [], pageParams: [] }, reading);
  expect(shown().map(({ lotId }) => lotId)).toEqual(['L-5', 'L-4', 'L-3']);

  lots = lots.map((lot) => (lot.lotId === 'L-5' ? { ...lot, standing: 'on-hold' } : lot));
  await refreshAfter(queries, '/deviations/1');
  expect(shown()[0]).toMatchObject({ lotId: 'L-5', standing: 'on-hold' });

  lots = [{ lotId: 'L-6', startedAt: '2026-03-06', standing: 'in-work' }, ...lots];
  await refreshAfter(queries, '/lots/6');
  expect(shown().map(({ lotId }) => lotId)).toEqual(['L-6', 'L-5', 'L-4']);
  stop();
});
