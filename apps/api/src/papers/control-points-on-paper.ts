import type { ControlPoint, Deviation, PlanContent } from '@larderbook/contracts';
import type { ControlPointRecordData } from '@larderbook/documents';
import { wordFor, type TemperatureUnit, type ToldFinding } from '@larderbook/haccp';
import { seriesOf } from '../lots/explain-curve';
import type { LotWithPoints } from '../lots/show-lot';
import { figureOf } from './figure-of';
import { limitsOnPaper } from './limits-on-paper';
import { entriesOnPaper } from './readings-on-paper';
import type { Telling } from './telling';

export function controlPointsOnPaper(
  { lot, rows, points }: LotWithPoints,
  plan: PlanContent,
  own: readonly Deviation[],
  unit: TemperatureUnit,
  telling: Telling,
): ControlPointRecordData[] {
  return lot.controlPoints.map((point) => {
    const { controlPoint } = point;
    const found = points.find((one) => one.point.controlPointId === controlPoint.controlPointId);
    const series = found && seriesOf(found, rows);
    return {
      ...headOf(controlPoint, plan, telling),
      limits: limitsOnPaper(point, own, unit, telling),
      isWeighed: controlPoint.takenAs === 'weighings',
      readings: entriesOnPaper(lot, point, own, telling),
      figures: series ? [figureOf(controlPoint, series.drawing, telling)] : [],
      found: foundOnPaper(series?.findings ?? [], telling),
    };
  });
}

/** Only the page of the explanation shows more. */
const mostFound = 12;

function foundOnPaper(findings: readonly ToldFinding[], telling: Telling): string[] {
  const said = findings.slice(0, mostFound).map((finding) => sayFound(finding, telling));
  const more = findings.length - said.length;
  return more > 0 ? [...said, telling.say('more-on-screen', { count: String(more) })] : said;
}

/**
 * For example "Mar 2, 2026, 3:10 am: Gap without a reading, 2 h: 120 °F, then 45 °F. Used as it is. Add the readings in
 * between."
 */
function sayFound({ found, from, treatment, whatToDo }: ToldFinding, { instant, line }: Telling): string {
  const when = from === undefined ? '' : `${instant(from)}: `;
  return `${when}${line(found)}. ${line(wordFor('treated', treatment))} ${line(whatToDo)}`;
}

export const headOf = (point: ControlPoint, plan: PlanContent, { say, limits }: Pick<Telling, 'say' | 'limits'>) => ({
  number: numberIn(point, plan, say),
  name: point.name,
  critical: point.kind === 'critical',
  step: plan.steps.find(({ stepId }) => stepId === point.stepId)?.name,
  hazard: point.hazard,
  monitoring: { ...point.monitoring, fewest: point.frequency && limits.sayFrequency(point.frequency) },
});

/** For example "CCP 2", in the order of the plan. */
export function numberIn({ controlPointId, kind }: ControlPoint, { controlPoints }: PlanContent, say: Telling['say']): string {
  const alike = controlPoints.filter((point) => point.kind === kind);
  const place = alike.findIndex((point) => point.controlPointId === controlPointId) + 1;
  return say(kind === 'critical' ? 'critical-number' : 'prerequisite-number', { number: String(place) });
}
