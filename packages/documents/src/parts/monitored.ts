import type { MonitoringData } from '../entry-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';

/** What is looked at, how, how often and by whom; nothing when the plan does not say. */
export function monitored({ pen, area }: Sheet, monitoring: MonitoringData | undefined): Block[] {
  if (!monitoring) return [];
  const { what, how, howOften, who } = monitoring;
  return [remark(pen, area, 'Monitored', words('body', `${what}; ${how}; ${howOften}; by ${who}`))];
}
