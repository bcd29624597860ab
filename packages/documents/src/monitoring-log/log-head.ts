import type { InstrumentData } from '../entry-data';
import type { MonitoringLogData } from '../monitoring-log-data';
import { remark } from '../page/facts';
import { masthead } from '../page/masthead';
import type { Sheet } from '../page/sheet';
import type { Telling } from '../page/telling';
import { kindAt } from '../parts/kind-at';
import { words, type Paragraph } from '../page/words';
import { monitored } from '../parts/monitored';
import { checkInWords } from '../parts/check-in-words';
import { sourceInWords } from '../parts/verdict-words';

export function logHead(sheet: Sheet, { controlPoint, product, period, instruments }: MonitoringLogData): void {
  const { pen, area, say } = sheet;
  const point = [controlPoint.number, kindAt(controlPoint, say)].filter(Boolean).join(', ');
  sheet.put(
    masthead(sheet, {
      title: controlPoint.name,
      subtitle: say('point-of-product', { product, point }),
      aside: { label: say('period'), value: periodInWords(period, sheet) },
    }),
    remark(pen, area, say('hazard'), words('body', controlPoint.hazard)),
    ...controlPoint.limits.map(({ what, printed, source }) =>
      remark(
        pen,
        area,
        say('limit'),
        words('strong', printed, what && { text: `  ${what}`, style: 'body' }),
        words('small', sourceInWords(source, say)),
      ),
    ),
    ...monitored(sheet, controlPoint.monitoring),
    ...(instruments.length ? [remark(pen, area, say('instruments'), ...instruments.map((each) => instrumentInWords(each, sheet)))] : []),
  );
}

export function periodInWords({ from, to }: MonitoringLogData['period'], { clock, say }: Telling): string {
  return clock.day(from) === clock.day(to) ? clock.day(from) : say('from-to', { from: clock.day(from), to: clock.day(to) });
}

function instrumentInWords({ name, kind, checks, between, flagged }: InstrumentData, telling: Telling): Paragraph {
  const { say } = telling;
  const told = checks.map((check) => checkInWords(check, telling)).join('; ');
  const more = between ? `; ${say('more-checks', { count: between })}` : '';
  return words(
    'body',
    { text: kind ? `${name}, ${kind}` : name },
    `; ${told || say('no-check-known')}${more}`,
    flagged.length > 0 ? { text: `. ${say('flagged-for', { flags: flagged.join('; ') })}`, style: 'strong' } : undefined,
  );
}
