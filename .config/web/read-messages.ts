import { parse } from '@formatjs/icu-messageformat-parser';
import { SYNTAX } from '../../packages/messages/src/syntax.ts';
import { parseAst, type ESTree, type Plugin } from 'vite';

const isTable = (id: string) => /packages\/messages\/src\/(en|es)\/.+\.ts$/.test(id);
/**
 * Reads the messages while the pages are built, so that a tablet fetches none of what reads them: an eighth of the first
 * page. A message with parameters stands in its table as it was read, one without as the text it is.
 */
export const readMessages: Plugin = {
  name: 'read-messages',
  config: () => ({
    resolve: { alias: [{ find: /^@formatjs\/icu-messageformat-parser$/, replacement: '@formatjs/icu-messageformat-parser/no-parser.js' }] },
  }),
  transform(code, id) {
    return isTable(id) ? { code: readAll(code), map: null } : undefined;
  },
};

/** The same module with each message of its tables read. */
export function readAll(code: string): string {
  const texts = textsIn(parseAst(code)).sort((a, b) => b.start - a.start);
  return texts.reduce((whole, { start, end, value }) => whole.slice(0, start) + JSON.stringify(parse(value)) + whole.slice(end), code);
}

type Text = { start: number; end: number; value: string };

function textsIn(node: unknown): Text[] {
  if (typeof node !== 'object' || node === null) return [];
  const { type, value } = node as { type?: string; value?: unknown };
  const own = type === 'Property' && isText(value) && SYNTAX.test(value.value) ? [value] : [];
  return [...own, ...Object.values(node).flatMap(textsIn)];
}

const isText = (node: unknown): node is ESTree.StringLiteral & Text =>
  typeof node === 'object' &&
  node !== null &&
  'type' in node &&
  node.type === 'Literal' &&
  'value' in node &&
  typeof node.value === 'string';
