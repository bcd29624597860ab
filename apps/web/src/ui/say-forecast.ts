import { whenWords } from './moment';

/** What is said of a forecast, whoever worked it out. Instants are epoch ms; left out where it may never be. */
export type ToldForecast = {
  state: 'on course' | 'at risk' | 'will miss' | 'expected' | 'too early to tell' | 'undetermined' | 'reached';
  /** The bound still to be reached: "40 °F". */
  target: string;
  by?: number;
  because: string;
  next?: string;
  probe?: string;
  arrival?: { best?: number; earliest?: number; latest?: number };
  medium?: { celsius: number; from: 'measured' | 'worked out from the readings' | 'set point' };
};

export type SaidForecast = { word: string; when: string; basis?: string };

/** Where and how the words are read: the shop's clock, what is today there, and its unit. */
export type Wall = { zone: string; now: number; degrees: '°F' | '°C' };

/**
 * "Expected at 40 °F about 14:20, between 13:50 and 15:10; it must be there by 14:55." With its state as a word, and
 * what the estimate rests on.
 */
export function sayForecast(told: ToldForecast, wall: Wall): SaidForecast {
  const word = told.state.charAt(0).toUpperCase() + told.state.slice(1);
  const { arrival, medium, target, because, by } = told;
  if (!arrival || !medium) return { word, when: `${target}: ${because}` };
  const basis = `An estimate${told.probe ? ` by ${told.probe}` : ''}, with ${sayMedium(medium, wall)}. Only readings are judged.`;
  const clock = (instant: number) => whenWords(instant, wall.now, wall.zone);
  const must = by === undefined ? '' : `; it must be there by ${clock(by)}`;
  const { best, earliest, latest } = arrival;
  if (earliest === undefined) return { word, when: `Never at ${target} in what it lies in now${must}.`, basis };
  const range =
    latest === undefined ? `at the earliest ${clock(earliest)}, perhaps never` : `between ${clock(earliest)} and ${clock(latest)}`;
  const about = best === undefined ? '' : ` about ${clock(best)}`;
  return { word, when: `Expected at ${target}${about}, ${range}${must}.`, basis };
}

const known: Record<NonNullable<ToldForecast['medium']>['from'], string> = {
  measured: 'as read',
  'set point': 'the set point of the plan',
  'worked out from the readings': 'worked out from the readings',
};

function sayMedium({ celsius, from }: NonNullable<ToldForecast['medium']>, { degrees }: Wall): string {
  const value = degrees === '°C' ? celsius : celsius * 1.8 + 32;
  return `${Math.round(value * 10) / 10} ${degrees} around it, ${known[from]}`;
}
