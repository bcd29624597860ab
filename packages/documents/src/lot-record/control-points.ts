import { figure, hasCurve } from '../figure/figure';
import type { ControlPointRecordData, LotRecordData } from '../lot-record-data';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { words } from '../page/words';
import { limitTable } from '../parts/limit-table';
import { monitored } from '../parts/monitored';
import { readingTable } from '../parts/reading-table';

/** Each control point in the order of the flow diagram: what it guards against, how it was judged, what was read. */
export function controlPoints(sheet: Sheet, data: LotRecordData): void {
  for (const point of data.controlPoints) controlPoint(sheet, point, data);
}

function controlPoint(sheet: Sheet, point: ControlPointRecordData, { deviations }: LotRecordData): void {
  const { pen, area } = sheet;
  const kind = point.critical ? 'critical control point' : 'prerequisite';
  sheet.space(12);
  sheet.hold(
    heading(pen, area, point.name, { number: point.number, aside: point.step ? `${kind} at ${point.step}` : kind }),
    remark(pen, area, 'Hazard', words('body', point.hazard)),
    ...monitored(sheet, point.monitoring),
  );
  limitTable(sheet, point.limits, deviations);
  for (const each of (point.figures ?? []).filter(hasCurve)) {
    sheet.space(8);
    sheet.put(figure(sheet, each));
  }
  if (point.readings.length) readingTable(sheet, point.readings, deviations);
  else sheet.put(remark(pen, area, 'Readings', words('slanted', 'None recorded.')));
}
