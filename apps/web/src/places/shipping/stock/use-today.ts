import { useShop } from '../../../api/use-shop';
import { useNow } from '../../../ui/time-left';
import { wallTime } from '../../../ui/wall-time';

/** As in "2026-03-02". */
export function useToday(): string {
  const { zone } = useShop();
  return wallTime(useNow(60_000), zone).slice(0, 10);
}
