import { IntlMessageFormat } from 'intl-messageformat';
import { clockFor } from './figures/clock';
import { writeList } from './figures/write-list';
import { writeQuantity } from './figures/write-quantity';
import type { ParametersOf } from './parameters';
import { SYNTAX } from './syntax';
import type { Instant, Value } from './value';
import { localeOf, type Voice } from './voice';

export type Words = Readonly<Record<string, string>>;

type Arguments<Text extends string> = keyof ParametersOf<Text> extends never ? [] : [ParametersOf<Text>];

/** An unknown code or parameter is a type error. */
export type Say<W extends Words> = <Code extends keyof W & string>(code: Code, ...values: Arguments<W[Code]>) => string;

export function say<const W extends Words>(words: W, voice: Voice): Say<W> {
  const read = messagesOf(words, localeOf(voice));
  return (code, ...[values]) => {
    const text: unknown = words[code];
    if (typeof text === 'string' && !SYNTAX.test(text)) return text;
    const said = String(read(code).format(written((values ?? {}) as Record<string, Value>, voice)));
    return said.replaceAll('.m..', '.m.'); // a time of Spanish that ends a sentence brings its stop: "3:41 p.m."
  };
}

const known = new WeakMap<Words, Map<string, IntlMessageFormat>>();

/** Reading a message takes longer than saying it, so each is read once a locale. Built pages hold them read already. */
function messagesOf(words: Words, locale: string): (code: string) => IntlMessageFormat {
  const messages = known.get(words) ?? new Map<string, IntlMessageFormat>();
  known.set(words, messages);
  return (code) => {
    const key = `${locale} ${code}`;
    const message = messages.get(key) ?? new IntlMessageFormat(words[code] as string, locale);
    messages.set(key, message);
    return message;
  };
}

const written = (values: Record<string, Value>, voice: Voice) =>
  Object.fromEntries(Object.entries(values).map(([name, value]) => [name, typeof value === 'number' ? value : write(value, voice)]));

/** Also used for values that stand alone, as in a cell of a table. */
export function write(value: Exclude<Value, number>, voice: Voice): string {
  if (typeof value === 'string') return value;
  const locale = localeOf(voice);
  if ('length' in value) return writeList(value, locale);
  if ('anyOf' in value) return writeList(value.anyOf, locale, 'disjunction');
  if ('unit' in value) return writeQuantity(value, locale);
  return 'day' in value ? clockFor(voice).calendarDay(value.day) : writeInstant(value, voice);
}

function writeInstant({ at, show, today }: Instant, voice: Voice): string {
  const clock = clockFor(voice);
  const instant = new Date(at).getTime();
  if (show === 'time' || (today !== undefined && clock.day(instant) === clock.day(today))) return clock.time(instant);
  return show === 'day' ? clock.day(instant) : clock.dayAndTime(instant);
}
