import type { Told } from '@larderbook/haccp';
import { useNow } from '../../../ui/time-left';
import { useSay } from '../../../ui/voice';

/** While a stage runs, the bound and its time stand here; the time left stands in the sentence below. */
export function useMargin(): (told: Told) => string | undefined {
  const say = useSay('lot-forms');
  const now = useNow(60_000);
  return ({ kind, running, margin }) =>
    kind === 'missed' || running?.deadline === undefined
      ? margin
      : say('bound-by', { bound: running.bound, when: { at: running.deadline, today: now } });
}
