import { catalogue } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { criticalLimit } from './limits';

test.each(catalogue.map(({ key, limit }) => [key, limit] as const))('%s crosses the wire whole', (_key, limit) => {
  expect(criticalLimit.parse(JSON.parse(JSON.stringify(limit)))).toEqual(limit);
});
