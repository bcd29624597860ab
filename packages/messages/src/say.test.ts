import { describe, expect, expectTypeOf, it } from 'vitest';
import type { ParametersOf } from './parameters';
import { say } from './say';
import { translated } from './translated';
import type { Value } from './value';
import type { Voice } from './voice';

const chicago: Voice = { language: 'en', timeZone: 'America/Chicago', timeStyle: 'US' };
const english = {
  held: '{count, plural, one {# lot is on hold.} other {# lots are on hold.}}',
  late: '{from} → {to} took {took}; {allowed} are allowed.',
  asked: 'Read the core now.',
} as const;
const spanish = translated<typeof english>()({
  held: '{count, plural, one {# lote está retenido.} other {# lotes están retenidos.}}',
  late: 'De {from} a {to} tardó {took}; se permiten {allowed}.',
  asked: 'Lea ahora el centro.',
});
const late = {
  from: { value: '130', unit: '°F' },
  to: { value: '80', unit: '°F' },
  took: { value: '7500000', unit: 'ms' },
  allowed: { value: '5400000', unit: 'ms' },
} as const;

describe('a message', () => {
  it('is said with its figures, in the words of the reader', () => {
    expect(say(english, chicago)('late', late)).toBe('130 °F → 80 °F took 2 h 5 min; 1 h 30 min are allowed.');
    expect(say(spanish, { ...chicago, language: 'es' })('late', late)).toBe('De 130 °F a 80 °F tardó 2 h 5 min; se permiten 1 h 30 min.');
  });

  it('counts as its language does', () => {
    const inEnglish = say(english, chicago);
    expect([inEnglish('held', { count: 1 }), inEnglish('held', { count: 1200 })]).toEqual(['1 lot is on hold.', '1,200 lots are on hold.']);
    expect(say(spanish, { ...chicago, language: 'es' })('held', { count: 2 })).toBe('2 lotes están retenidos.');
  });

  it('says an instant by the clock of the shop', () => {
    const at = Date.parse('2026-11-29T20:26:00Z');
    const words = { left: 'Left {at}.', dated: 'Use by {day}.' } as const;
    expect(say(words, chicago)('left', { at: { at } })).toBe('Left Nov 29, 2026, 2:26 pm.');
    expect(say(words, { ...chicago, timeStyle: 'international' })('left', { at: { at } })).toBe('Left 29 Nov 2026, 14:26.');
    const short = { left: 'Left {at}.' } as const;
    expect(say(short, chicago)('left', { at: { at: '2026-11-29T20:26:00Z', show: 'day' } })).toBe('Left Nov 29, 2026.');
    expect(say(short, chicago)('left', { at: { at, today: at + 3_600_000 } })).toBe('Left 2:26 pm.');
    expect(say(short, chicago)('left', { at: { at, today: at + 86_400_000 } })).toBe('Left Nov 29, 2026, 2:26 pm.');
    expect(say(words, chicago)('dated', { day: { day: '2026-12-05' } })).toBe('Use by Dec 5, 2026.');
  });
});

describe('several words', () => {
  it('are joined as the language of the reader joins them', () => {
    const words = { used: '{who}' } as const;
    expect(say(words, chicago)('used', { who: ['Ana', 'Ben', 'Eva'] })).toBe('Ana, Ben, and Eva');
    expect(say(words, { ...chicago, language: 'es' })('used', { who: ['Ana', 'Ben', 'Eva'] })).toBe('Ana, Ben y Eva');
  });
});

describe('the type of a message', () => {
  it('knows its parameters', () => {
    expectTypeOf<ParametersOf<typeof english.held>>().toEqualTypeOf<{ count: number }>();
    expectTypeOf<keyof ParametersOf<typeof english.late>>().toEqualTypeOf<'from' | 'to' | 'took' | 'allowed'>();
    expectTypeOf<ParametersOf<'By {who}'>>().toEqualTypeOf<{ who: Value }>();
  });

  it('refuses a code or a parameter it does not have', () => {
    const inEnglish = say(english, chicago);
    // @ts-expect-error there is no such code
    expect(() => inEnglish('helt', { count: 1 })).toThrow();
    // @ts-expect-error the count is missing
    expect(() => inEnglish('held')).toThrow();
    // @ts-expect-error a parameter the message does not take
    expect(inEnglish('late', { ...late, tok: 'x' })).toContain('2 h 5 min');
    // @ts-expect-error takes nothing
    expect(inEnglish('asked', { now: '1' })).toBe('Read the core now.');
  });

  it('refuses a translation that is not complete, or says what English does not', () => {
    // @ts-expect-error two codes are missing
    translated<typeof english>()({ asked: 'Lea.' });
    // @ts-expect-error {tardo} is no parameter of the English message
    translated<typeof english>()({ ...spanish, late: '{from} {to} {tardo} {allowed}' });
    // @ts-expect-error says nothing of {took}
    translated<typeof english>()({ ...spanish, late: '{from} {to} {allowed}' });
    // @ts-expect-error a code too many
    translated<typeof english>()({ ...spanish, more: 'Más.' });
    expect(spanish.asked).toBe('Lea ahora el centro.');
  });
});
