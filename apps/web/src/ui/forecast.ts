import type { Coded, Quantity } from '@larderbook/haccp';
import { spokenAll, type Clock, type SayOf, type Spoken } from '@larderbook/messages';

/** Instants are epoch ms, left out where it may never be. */
export type ToldForecast = {
  state: 'on course' | 'at risk' | 'will miss' | 'expected' | 'too early to tell' | 'undetermined' | 'reached';
  /** The bound still to be reached. */
  target: Quantity;
  by?: number;
  because: Coded[];
  next: Coded[];
  probe?: string;
  arrival?: { best?: number; earliest?: number; latest?: number };
  medium?: { celsius: number; from: 'measured' | 'worked out from the readings' | 'set point' };
};

export type WrittenForecast = { word: string; when: string; next?: string; basis?: string };

export type Reader = { clock: Clock; now: number; degrees: '°F' | '°C'; say: SayOf<'explaining'>; told: Spoken };

/** "Expected at 40 °F about 2:20 pm, between 1:50 pm and 3:10 pm. It must be there by 2:55 pm." */
export function writeForecast(told: ToldForecast, reader: Reader): WrittenForecast {
  const { say, clock, now } = reader;
  const { arrival, medium, target, by } = told;
  const because = spokenAll(reader.told, told.because);
  const next = spokenAll(reader.told, told.next) || undefined;
  const word = say(forecastWord[told.state]);
  if (!arrival || !medium) return { word, when: say('target-because', { target, because }), next };
  const must = by === undefined ? [] : [say('must-be-there', { by: clock.when(by, now) })];
  return { word, when: [expectation(arrival, target, reader), ...must].join(' '), next, basis: basisOf(told.probe, medium, reader) };
}

export const forecastWord = {
  'on course': 'on-course',
  'at risk': 'at-risk',
  'will miss': 'will-miss',
  expected: 'expected',
  'too early to tell': 'too-early-to-tell',
  undetermined: 'undetermined',
  reached: 'reached',
} as const satisfies Record<ToldForecast['state'], string>;

function expectation(arrival: NonNullable<ToldForecast['arrival']>, target: Quantity, { say, clock, now }: Reader): string {
  if (arrival.earliest === undefined) return say('never', { target });
  const at = (instant: number) => clock.when(instant, now);
  const earliest = at(arrival.earliest);
  const best = arrival.best === undefined ? undefined : at(arrival.best);
  if (arrival.latest === undefined) {
    return best === undefined ? say('some-time-from', { target, earliest }) : say('expected-from', { target, best, earliest });
  }
  const latest = at(arrival.latest);
  return best === undefined
    ? say('some-time-between', { target, earliest, latest })
    : say('expected-between', { target, best, earliest, latest });
}

function basisOf(probe: string | undefined, { celsius, from }: NonNullable<ToldForecast['medium']>, { degrees, say }: Reader): string {
  const value = degrees === '°C' ? celsius : celsius * 1.8 + 32;
  const medium = { value: String(Math.round(value * 10) / 10), unit: degrees };
  const how = { medium, from: fromFor[from] };
  return probe === undefined ? say('estimate', how) : say('estimate-by', { probe, ...how });
}

const fromFor: Record<NonNullable<ToldForecast['medium']>['from'], string> = {
  measured: 'measured',
  'set point': 'setpoint',
  'worked out from the readings': 'workedout',
};
