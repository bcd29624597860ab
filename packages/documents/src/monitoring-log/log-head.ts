import type { InstrumentData } from '../entry-data';
import type { MonitoringLogData } from '../monitoring-log-data';
import { remark } from '../page/facts';
import { masthead } from '../page/masthead';
import type { Sheet } from '../page/sheet';
import type { WallClock } from '../page/wall-clock';
import { words, type Paragraph } from '../page/words';
import { monitored } from '../parts/monitored';
import { checkInWords, moreChecks, noCheck } from '../parts/check-in-words';
import { sourceInWords } from '../parts/verdict-words';

/** The control point at the head of its log: hazard, limit with its source, how it is monitored and with what. */
export function logHead(sheet: Sheet, { controlPoint, product, period, instruments }: MonitoringLogData): void {
  const { pen, area, clock } = sheet;
  const kind = controlPoint.critical ? 'Critical control point' : 'Prerequisite';
  const name = [controlPoint.number, kind.toLowerCase()].filter(Boolean).join(', ');
  sheet.put(
    masthead(sheet, {
      title: controlPoint.name,
      subtitle: `${product}: ${controlPoint.step ? `${name} at ${controlPoint.step}` : name}`,
      aside: { label: 'Period', value: periodInWords(period, clock) },
    }),
    remark(pen, area, 'Hazard', words('body', controlPoint.hazard)),
    ...controlPoint.limits.map(({ what, printed, source }) =>
      remark(
        pen,
        area,
        'Limit',
        words('strong', printed, what && { text: `  ${what}`, style: 'body' }),
        words('small', sourceInWords(source)),
      ),
    ),
    ...monitored(sheet, controlPoint.monitoring),
    ...(instruments.length ? [remark(pen, area, 'Instruments', ...instruments.map((each) => instrumentInWords(each, clock)))] : []),
  );
}

export function periodInWords({ from, to }: MonitoringLogData['period'], clock: WallClock): string {
  return clock.sameDay(from, to) ? clock.day(from) : `${clock.day(from)} to ${clock.day(to)}`;
}

function instrumentInWords({ name, kind, checks, between, flagged }: InstrumentData, clock: WallClock): Paragraph {
  const told = checks.map((check) => checkInWords(check, (at) => clock.dayAndTime(at))).join('; ');
  const more = between ? `; ${moreChecks(between)}` : '';
  return words(
    'body',
    { text: kind ? `${name}, ${kind}` : name },
    `; ${told || noCheck}${more}`,
    flagged.length > 0 ? { text: `. Flagged: ${flagged.join('; ')}`, style: 'strong' } : undefined,
  );
}
