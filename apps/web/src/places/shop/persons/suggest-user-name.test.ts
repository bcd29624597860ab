import { userName } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { suggestUserName } from './suggest-user-name';

test.each([
  ['two words', 'Mara Quill', 'mara.quill'],
  ['accents and an apostrophe', 'Zoë d’Arvélo', 'zoe.d.arvelo'],
  ['spaces around', '  Ivo   Tarn ', 'ivo.tarn'],
  ['a name longer than a user name may be', 'Wilhelmina '.repeat(5), 'wilhelmina.wilhelmina.wilhelmina.wilhelm'],
])('a user name is suggested from %s, and the contract takes it', (_case, name, suggested) => {
  expect(suggestUserName(name)).toBe(suggested);
  expect(userName.parse(suggested)).toBe(suggested);
});

test.each([
  ['too short', 'Bo'],
  ['in letters a user name cannot hold', '李'],
  ['empty', ''],
])('nothing is suggested from a name that is %s', (_case, name) => {
  expect(suggestUserName(name)).toBe('');
});
