import { sayHumidityKept, sayHumidityTimes, type HumidityKept } from '@larderbook/haccp';
import type { Telling } from './telling';

type Answered = { seen?: string; humidity?: HumidityKept };

export function answerOnPaper({ seen, humidity }: Answered, instant: Telling['instant']): string | undefined {
  const kept = humidity && [sayHumidityKept(humidity), sayHumidityTimes(humidity, instant)].filter(Boolean).join(', ');
  return [kept, seen].filter(Boolean).join('; ') || undefined;
}
