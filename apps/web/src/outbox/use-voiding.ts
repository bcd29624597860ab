import { voidRecord, type InputOf } from '@larderbook/contracts';
import { useSay } from '../ui/voice';
import { useRecording } from './use-recording';

type What = InputOf<typeof voidRecord>['what'];

/** `said` is what the outbox calls the record. */
export function useVoiding(what: What, amends: string, said: string) {
  const say = useSay('shared');
  const recording = useRecording(voidRecord);
  const strike = (reason: string) => recording.save({ voidId: recording.id, what, amends, reason }, say('voided-entry', { what: said }));
  return { ...recording, strike };
}
