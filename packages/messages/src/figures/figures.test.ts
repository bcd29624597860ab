import { describe, expect, it } from 'vitest';
import type { Voice } from '../voice';
import { clockFor } from './clock';
import { writeDuration } from './write-duration';
import { writeNumber } from './write-number';
import { writeQuantity } from './write-quantity';
import { minutesAhead } from './zone';

const voice = (language: Voice['language'], timeStyle: Voice['timeStyle'], timeZone = 'America/Chicago'): Voice => ({
  language,
  timeStyle,
  timeZone,
});
const minute = 60_000;

describe('a number', () => {
  it('keeps every digit it came with', () => {
    expect(writeNumber('0.10', 'en-US')).toBe('0.10');
    expect(writeNumber('123456789012345678.5', 'en-US')).toBe('123,456,789,012,345,678.5');
    expect(writeNumber('-4.25', 'es-MX')).toBe('-4.25');
    expect(writeNumber('1234.5', 'de-DE')).toBe('1.234,5');
  });
});

describe('a figure', () => {
  it('stands with its unit where people say it', () => {
    const said = (value: string, unit: Parameters<typeof writeQuantity>[0]['unit']) => writeQuantity({ value, unit }, 'en-US');
    expect(said('151.5', '°F')).toBe('151.5 °F');
    expect(said('5.21', 'pH')).toBe('pH 5.21');
    expect(said('0.838', 'aw')).toBe('aw 0.838');
    expect(said('1.9', 'ratio')).toBe('1.9');
    expect(said('2.1', 'log10')).toBe('2.1 log₁₀');
    expect(said('5400000', 'ms')).toBe('1 h 30 min');
    expect([said('1', 'days'), said('3', 'days')]).toEqual(['1 day', '3 days']);
    expect(writeQuantity({ value: '3', unit: 'days' }, 'es-MX')).toBe('3 días');
    expect(writeQuantity({ value: '100', unit: 'cfu/g' }, 'es-MX')).toBe('100 UFC/g');
  });
});

describe('a length of time', () => {
  it('leaves out idle parts', () => {
    expect([16_900, 4 * minute + 30_000, 90 * minute, 60 * minute].map((each) => writeDuration(each, 'en-US'))).toEqual([
      '16.9 s',
      '4 min 30 s',
      '1 h 30 min',
      '1 h',
    ]);
    expect(writeDuration(16_900, 'de-DE')).toBe('16,9 s');
  });
});

describe('the clock on the wall', () => {
  const at = Date.parse('2026-11-29T20:26:00Z');

  it('is read as the shop writes times, in the language of the reader', () => {
    expect(clockFor(voice('en', 'US')).dayAndTime(at)).toBe('Nov 29, 2026, 2:26 pm');
    expect(clockFor(voice('en', 'international')).dayAndTime(at)).toBe('29 Nov 2026, 14:26');
    expect(clockFor(voice('es', 'US')).dayAndTime(at)).toMatch(/^29 nov 2026, 2:26 p\.\s?m\.$/);
    expect(clockFor(voice('es', 'international')).dayAndTime(at)).toBe('29 nov 2026, 14:26');
  });

  it('names its zone where a paper says by which clock all of it is told', () => {
    expect(clockFor(voice('en', 'US')).dayAndTimeWithZone(at)).toBe('Nov 29, 2026, 2:26 pm CST');
  });

  it('counts minutes from midnight of the shop', () => {
    expect(clockFor(voice('en', 'US')).minuteOfDay(at)).toBe(14 * 60 + 26);
    expect(clockFor(voice('en', 'international', 'Asia/Kolkata')).minuteOfDay(at)).toBe(1 * 60 + 56);
    expect(clockFor(voice('en', 'US')).minuteOfDay(Date.parse('2026-11-29T05:30:00Z'))).toBe(23 * 60 + 30);
  });

  it('begins a day at midnight of the shop, and refuses a zone that is none', () => {
    const day = (at: string) => clockFor(voice('en', 'US')).day(Date.parse(at));
    expect([day('2025-09-05T04:59Z'), day('2025-09-05T05:01Z')]).toEqual(['Sep 4, 2025', 'Sep 5, 2025']);
    expect(() => clockFor(voice('en', 'US', 'Mars/Olympus'))).toThrow(RangeError);
  });

  it('says the zone on a day on which an hour comes twice, and on no other', () => {
    const [first, second] = [Date.parse('2026-11-01T06:30:00Z'), Date.parse('2026-11-01T07:30:00Z')];
    expect([first, second].map((each) => clockFor(voice('en', 'US')).time(each))).toEqual(['1:30 am CDT', '1:30 am CST']);
    const dublin = clockFor(voice('en', 'international', 'Europe/Dublin'));
    expect(dublin.time(Date.parse('2026-10-25T00:30:00Z'))).toBe('01:30 GMT+1');
    expect(dublin.time(at)).toBe('20:26');
  });

  it.each([
    ['the first of two half past ones in autumn', '2026-11-01T01:30:00-05:00', 'America/Chicago', '01:30 CDT'],
    ['the second', '2026-11-01T01:30:00-06:00', 'America/Chicago', '01:30 CST'],
    ['a chill that began the evening before', '2026-10-31T21:00:00-05:00', 'America/Chicago', '21:00 CDT'],
    ['half a day before, that evening', '2026-10-31T18:30:00-05:00', 'America/Chicago', '18:30 CDT'],
    ['the evening after', '2026-11-01T18:30:00-06:00', 'America/Chicago', '18:30'],
    ['before the hour that spring leaves out', '2026-03-08T01:30:00-06:00', 'America/Chicago', '01:30 CST'],
    ['and after it', '2026-03-08T03:30:00-05:00', 'America/Chicago', '03:30 CDT'],
    ['by the name that people there use', '2026-10-25T01:30:00+00:00', 'Europe/London', '01:30 GMT'],
    ['the day before, at noon', '2026-10-31T12:00:00-05:00', 'America/Chicago', '12:00'],
    ['where clocks never change', '2026-11-01T01:30:00-07:00', 'America/Phoenix', '01:30'],
  ])('names its zone where the clocks change: %s', (_case, moment, zone, written) => {
    expect(clockFor(voice('en', 'international', zone)).time(Date.parse(moment))).toBe(written);
  });

  it.each([
    ['later the same evening', '2026-03-05T23:59:00-06:00', '2026-03-05T22:00:00-06:00', '23:59'],
    ['after midnight it is another day', '2026-03-06T00:14:00-06:00', '2026-03-05T22:00:00-06:00', '6 Mar 2026, 00:14'],
    ['by the shop’s calendar, not by that of the instant', '2026-03-05T05:30:00Z', '2026-03-05T22:00:00-06:00', '4 Mar 2026, 23:30'],
    ['what is due where the clocks change', '2026-11-01T01:45:00-06:00', '2026-10-31T23:30:00-05:00', '1 Nov 2026, 01:45 CST'],
    ['what was entered in the hour that comes twice', '2026-11-01T01:45:00-06:00', '2026-11-01T01:45:00-05:00', '01:45 CST'],
  ])('says the day where it is another: %s', (_case, moment, now, written) => {
    expect(clockFor(voice('en', 'international')).when(Date.parse(moment), Date.parse(now))).toBe(written);
  });

  it('is half an hour off where half an hour is what changes', () => {
    const zone = 'Australia/Lord_Howe';
    expect([minutesAhead(Date.parse('2026-01-15T00:00Z'), zone), minutesAhead(Date.parse('2026-07-15T00:00Z'), zone)]).toEqual([660, 630]);
  });

  it('says a day of the calendar the same in every zone', () => {
    expect(clockFor(voice('en', 'US', 'Pacific/Kiritimati')).calendarDay('2026-12-05')).toBe('Dec 5, 2026');
  });
});
