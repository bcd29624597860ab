import type { PlanControlPointData, PlanLimitData } from '../plan-paper-data';
import type { Block } from '../page/block';
import { remark } from '../page/facts';
import { heading } from '../page/heading';
import type { Sheet } from '../page/sheet';
import { given, words } from '../page/words';
import { sentence } from '../parts/sentence';
import { monitored } from '../parts/monitored';
import { sourceInWords } from '../parts/verdict-words';

/** A control point as the plan sets it: hazard, limits with source, monitoring, corrective action, verification. */
export function planControlPoint(sheet: Sheet, point: PlanControlPointData): void {
  const { pen, area } = sheet;
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
  const kind = critical ? 'critical control point' : 'prerequisite';
  sheet.space(12);
  sheet.hold(
    heading(pen, area, name, { number, aside: step ? `${kind} at ${step}` : kind }),
    remark(pen, area, 'Hazard', words('body', hazard)),
  );
  sheet.put(
    ...limits.map((limit) => limitOf(sheet, limit)),
    ...monitored(sheet, monitoring),
    ...(clockStarts ? [remark(pen, area, 'Clock starts', words('body', sentence(clockStarts)))] : []),
    ...(follows ? [remark(pen, area, 'Follows', words('body', sentence(follows)))] : []),
    ...(starts ? [remark(pen, area, 'Recorded', words('body', `The moment: it starts the clock of ${starts}.`))] : []),
    ...(liesIn ? [remark(pen, area, 'Lies in', words('body', liesIn))] : []),
    ...(piece ? [remark(pen, area, 'Piece', words('body', piece))] : []),
    ...(allowedFor ? [remark(pen, area, 'Allowed for', words('body', allowedFor))] : []),
    remark(pen, area, 'If it is missed', words('body', correctiveAction)),
    remark(pen, area, 'Verified', verification ? words('body', verification) : words('slanted', 'Not written.')),
  );
}

function limitOf({ pen, area }: Sheet, { printed, source, conditions = [], rows, judged }: PlanLimitData): Block {
  return remark(
    pen,
    area,
    'Limit',
    ...given(
      words('strong', printed),
      ...conditions.map((says) => words('smallInk', says)),
      rows?.length ? words('smallInk', `Any one of: ${rows.join(' · ')}`) : undefined,
      judged && words('smallInk', judged),
      words('small', sourceInWords(source)),
    ),
  );
}
