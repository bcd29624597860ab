import { IntlMessageFormat } from 'intl-messageformat';
import { expect, test } from 'vitest';
import { readAll } from './web/read-messages.ts';

test('what a tablet is sent holds each message with parameters as it was read, and every other as its text', async () => {
  const read = readAll(`import { more } from './more';
    export const place = { ...more, 'left-of': '“{weight}” left of {code}', done: 'Done — “now”', many: "{n, plural, one {# lot's} other {# lots}}" };`);
  expect(read).toContain(`done: 'Done — “now”'`);
  const [, leftOf] = /'left-of': (\[.*?\]), done/.exec(read);
  expect(new IntlMessageFormat(JSON.parse(leftOf), 'en').format({ weight: '2 lb', code: 'A-1' })).toBe('“2 lb” left of A-1');
  const [, many] = /many: (\[.*\]) \};/.exec(read);
  expect(new IntlMessageFormat(JSON.parse(many), 'en').format({ n: 3 })).toBe('3 lots');
});
