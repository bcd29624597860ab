import type { HumidityKept } from '@larderbook/haccp';
import { sayAnswered, sayHumidFrom } from '@larderbook/messages';
import type { Telling } from './telling';

type Answered = { seen?: string; humidity?: HumidityKept };

/** What was seen, with how humidity was kept and both its moments, where that was asked. */
export function answerOnPaper({ seen, humidity }: Answered, say: Telling['say']): string | undefined {
  const kept = humidity && [sayAnswered({ humidity }, say), sayHumidFrom(humidity, say)].filter(Boolean).join(', ');
  return [kept, seen].filter(Boolean).join('; ') || undefined;
}
