import { voidRecord, type InputOf } from '@larderbook/contracts';
import { useRecording } from './use-recording';

type What = InputOf<typeof voidRecord>['what'];

/** Voids one record, with a reason; `said` is what the outbox calls it. */
export function useVoiding(what: What, amends: string, said: string) {
  const recording = useRecording(voidRecord);
  const strike = (reason: string) => recording.save({ voidId: recording.id, what, amends, reason }, `${said} voided`);
  return { ...recording, strike };
}
