import { readFileSync } from 'node:fs';
import { parseAst, type ESTree, type Plugin } from 'vite';
import { inPseudo } from '../../packages/messages/src/pseudo.ts';

const spanish = /(packages\/messages\/src)\/es\/(.+)\.ts$/;

/**
 * Puts the language nobody speaks in the place of Spanish, in a build for tests: every table of `es` says what that of
 * `en` does, in its pseudo form. English stays, so that whatever is English in any language is found.
 */
export const pseudoLanguage: Plugin = {
  name: 'pseudo-language',
  enforce: 'pre',
  load(id) {
    const [, messages, file = ''] = spanish.exec(id) ?? [];
    if (!messages || ['all', 'index', 'published'].includes(file)) return undefined; // they name tables and have none
    if (file.startsWith('published/')) return replaced(readFileSync(id, 'utf8'), ({ key }) => key);
    return replaced(readFileSync(`${messages}/en/${file}.ts`, 'utf8'), ({ text }) => text);
  },
};

type Message = { key: string; text: string; start: number; end: number };

/** The same module with each message of its tables in the language nobody speaks. */
function replaced(code: string, english: (message: Message) => string): string {
  const messages = messagesIn(parseAst(code, { lang: 'ts' })).sort((a, b) => b.start - a.start);
  return messages.reduce(
    (whole, message) => whole.slice(0, message.start) + JSON.stringify(inPseudo(english(message))) + whole.slice(message.end),
    code,
  );
}

function messagesIn(node: unknown): Message[] {
  if (typeof node !== 'object' || node === null) return [];
  const { type, key, value } = node as { type?: string; key?: ESTree.PropertyKey; value?: Literal };
  const isMessage = type === 'Property' && value?.type === 'Literal' && typeof value.value === 'string';
  const own = isMessage ? [{ key: nameOf(key), text: value.value, start: value.start, end: value.end }] : [];
  return [...own, ...Object.values(node).flatMap(messagesIn)];
}

type Literal = { type: string; value: string; start: number; end: number };

const nameOf = (key: unknown): string => (key as { name?: string; value?: string }).name ?? (key as Literal).value;
