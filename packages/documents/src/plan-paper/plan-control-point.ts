import type { PlanControlPointData, PlanLimitData } from '../plan-paper-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { given, words } from '../page/words';
import { sentence } from '../parts/sentence';
import { monitored } from '../parts/monitored';
import { sourceInWords } from '../parts/verdict-words';
import { kindAt } from '../parts/kind-at';

export function planControlPoint(sheet: Sheet, point: PlanControlPointData): void {
  const { pen, area, say } = sheet;
  const {
    number,
    name,
    critical,
    step,
    hazard,
    limits,
    monitoring,
    clockStarts,
    follows,
    starts,
    liesIn,
    piece,
    allowedFor,
    correctiveAction,
    verification,
  } = point;
  sheet.space(12);
  sheet.hold(
    heading(pen, area, name, { number, aside: kindAt({ critical, step }, say) }),
    remark(pen, area, say('hazard'), words('body', hazard)),
  );
  sheet.put(
    ...limits.map((limit) => limitOf(sheet, limit)),
    ...monitored(sheet, monitoring),
    ...(clockStarts ? [remark(pen, area, say('clock-starts'), words('body', sentence(clockStarts)))] : []),
    ...(follows ? [remark(pen, area, say('follows'), words('body', sentence(follows)))] : []),
    ...(starts ? [remark(pen, area, say('recorded'), words('body', say('moment-starts', { points: starts })))] : []),
    ...(liesIn ? [remark(pen, area, say('lies-in'), words('body', liesIn))] : []),
    ...(piece ? [remark(pen, area, say('piece'), words('body', piece))] : []),
    ...(allowedFor ? [remark(pen, area, say('allowed-for'), words('body', allowedFor))] : []),
    remark(pen, area, say('if-missed'), words('body', correctiveAction)),
    remark(pen, area, say('verified'), verification ? words('body', verification) : words('slanted', say('not-written'))),
  );
}

function limitOf({ pen, area, say }: Sheet, { printed, source, conditions = [], rows, judged }: PlanLimitData): Block {
  return remark(
    pen,
    area,
    say('limit'),
    ...given(
      words('strong', printed),
      ...conditions.map((says) => words('smallInk', says)),
      rows?.length ? words('smallInk', say('any-one-of', { rows: rows.join(' · ') })) : undefined,
      judged && words('smallInk', judged),
      words('small', sourceInWords(source, say)),
    ),
  );
}
