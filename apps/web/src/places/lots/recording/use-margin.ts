import type { Told } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { whenWords } from '../../../ui/moment';
import { useNow } from '../../../ui/time-left';

/**
 * What stands beside the word of a verdict: its margin; while a stage runs, what is due and by which time on the wall,
 * since the time that is left stands in the sentence below.
 */
export function useMargin(): (told: Told) => string | undefined {
  const { zone } = useShop();
  const now = useNow(60_000);
  return ({ kind, running, margin }) =>
    kind === 'missed' || running?.deadline === undefined ? margin : `${running.bound} by ${whenWords(running.deadline, now, zone)}`;
}
