import { QueryClient } from '@tanstack/react-query';
import { listItems, recordItem, recordReading, requestOf, showLot, voidRecord } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { ask } from './ask';
import { refreshAfter } from './refresh-after';

const lotId = '01890000-0000-7000-8000-000000000001';
const shown: readonly (readonly unknown[])[] = [ask(listItems, {}).queryKey, ask(showLot, { lotId }).queryKey];

/** Which of two answers on a page a write has asked for again. */
async function askedAgain(path: string): Promise<string[]> {
  const queries = new QueryClient();
  for (const queryKey of shown) queries.setQueryData(queryKey, {});
  await refreshAfter(queries, path);
  return shown.filter((key) => queries.getQueryState(key)?.isInvalidated).map(([read]) => String(read));
}

test('a reading changes its lot and no item', async () => {
  const readingId = '01890000-0000-7000-8000-000000000002';
  expect(await askedAgain(requestOf(recordReading, { readingId }).path)).toEqual([showLot.path]);
});

test.each([recordItem, voidRecord])('$path may change all there is', async ({ path }) => {
  expect(await askedAgain(path)).toEqual([listItems.path, showLot.path]);
});
