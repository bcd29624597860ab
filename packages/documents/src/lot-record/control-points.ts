import { figure, hasCurve } from '../figure/figure';
import type { ControlPointRecordData, LotRecordData, WeighingData } from '../lot-record-data';
import { gap, stack, type Block } from '../page/block';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';
import { limitTable } from '../parts/limit-table';
import { monitored } from '../parts/monitored';
import { readingList } from '../parts/reading-list';
import { kindAt } from '../parts/kind-at';

/** Points: a figure needs about this much more for the verdict of each limit. */
const aLimit = 64;

export function controlPoints(sheet: Sheet, data: LotRecordData): void {
  for (const point of data.controlPoints) controlPoint(sheet, point, data);
}

function controlPoint(sheet: Sheet, point: ControlPointRecordData, { deviations, weighings }: LotRecordData): void {
  const { pen, area, say } = sheet;
  const head = [
    heading(pen, area, point.name, { number: point.number, aside: kindAt(point, say) }),
    remark(pen, area, say('hazard'), words('body', point.hazard)),
    ...monitored(sheet, point.monitoring),
  ];
  const figures = (point.figures ?? []).filter(hasCurve).map((each) => stack([gap(8), figure(sheet, each)]));
  if (figures.length) sheet.reserve(stack([...head, ...figures]).height + point.limits.length * aLimit);
  sheet.space(12);
  sheet.hold(...head);
  limitTable(sheet, point.limits, deviations, point.critical);
  // readings fill this page when a figure has to wait for the next
  const isNow = sheet.hasRoom(stack(figures).height);
  if (isNow) sheet.put(...figures);
  if (point.found?.length) sheet.put(found(sheet, point.found));
  if (point.isWeighed) sheet.put(weighed(sheet, point, weighings));
  else if (point.readings.length) readingList(sheet, point.readings, deviations);
  else sheet.put(remark(pen, area, say('readings'), words('slanted', say('none-recorded'))));
  if (!isNow) sheet.put(...figures);
}

/** Faults of the readings are told beside the curve and never mended. */
const found = ({ pen, area, say }: Sheet, sentences: string[]): Block =>
  remark(pen, area, say('found'), ...sentences.map((sentence) => words('body', sentence)));

/** Names the weighings that count, which are not listed twice. */
function weighed({ pen, area, say }: Sheet, { number }: ControlPointRecordData, all: WeighingData[]): Block {
  const own = all.filter(({ controlPoint: at }) => at !== undefined && at === number);
  const said = own.map(({ ingredient, weighed: weight }) => `${ingredient}, ${weight}`).join('; ');
  const shown = said
    ? words('body', `${said}. `, { text: say('see-formula-and-cure'), style: 'slanted' })
    : words('slanted', say('none-recorded'));
  return remark(pen, area, say('weighings'), shown);
}
