import { keptPhrase, keptTimes, type HumidityKept } from '@larderbook/haccp';
import type { SayOf } from './words';

type SayEntries = SayOf<'entries'>;
type Answered = { seen?: string; humidity?: HumidityKept };

/** "live steam, 1 h 50 min in all; door shut": how humidity was kept, and what was seen. */
export function sayAnswered({ seen, humidity }: Answered, say: SayEntries): string {
  const kept = humidity && keptPhrase(humidity);
  return [kept && (say as (code: string, figures?: object) => string)(kept.code, kept.figures), seen].filter(Boolean).join('; ');
}

/** "into the oven 7:40 am, humid from 7:50 am", where the option is timed. */
export function sayHumidFrom(humidity: HumidityKept, say: SayEntries): string | undefined {
  const times = keptTimes(humidity);
  return times && say('kept-times', { intoOven: { at: times.intoOven }, from: { at: times.from } });
}
