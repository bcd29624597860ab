import type { MonitoringData } from '../entry-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import type { Sheet } from '../page/sheet';
import { words, type Span } from '../page/words';
import { sentence } from './sentence';

export function monitored({ pen, area, say }: Sheet, monitoring: MonitoringData | undefined): Block[] {
  if (!monitoring) return [];
  const { what, how, howOften, fewest = '', who } = monitoring;
  const all = [
    [say('what-label'), what],
    [say('how-label'), how],
    [say('how-often-label'), howOften],
    [say('fewest-readings'), fewest],
    [say('by-whom'), who],
  ] as const;
  const asked = all.filter(([, text]) => text);
  const spans = asked.flatMap(([label, text], index): Span[] => [
    { text: `${index ? '  ' : ''}${label} `, style: 'columnHead' },
    { text: sentence(text) },
  ]);
  return [remark(pen, area, say('monitored'), words('body', ...spans))];
}
