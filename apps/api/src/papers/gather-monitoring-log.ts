import type { ControlPoint, InputOf, PlanContent, printMonitoringLog } from '@larderbook/contracts';
import type { MonitoredControlPointData, MonitoringLogData, StatementData } from '@larderbook/documents';
import { canonicalJson, type TemperatureUnit } from '@larderbook/haccp';
import type { Look } from '../ledger/entries';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { productsNow } from '../products/products-now';
import { headOf } from './control-points-on-paper';
import { instrumentsAt } from './instruments-on-paper';
import { logRows } from './log-rows';
import type { Stretch } from './logged-entries.queries';
import { tellingIn, type Telling } from './telling';
import { sheetOf } from './sheet-of';
import { endOfDay, startOfDay } from './start-of-day';

type Asked = InputOf<typeof printMonitoringLog>;

const mostDays = 400;
const day = 86_400_000;

/** Covers whole days of the shop. Rows are read while they are drawn. */
export async function gatherMonitoringLog(
  look: Look,
  { controlPointId, from, to }: Asked,
  by: Person,
  now: Date,
): Promise<MonitoringLogData> {
  checkPeriod(from, to);
  const { timeZone, units } = by.establishment;
  const period = { from: startOfDay(from, timeZone), until: endOfDay(to, timeZone) };
  const heat: TemperatureUnit = units === 'US' ? '°F' : '°C';

  return look(async (tx) => {
    const versions = await versionsOf(tx, controlPointId);
    const telling = tellingIn(by.voice);
    const { say } = telling;
    const [latest] = versions;
    if (!latest) throw new Problem('not-found', told('point-never-adopted'));
    const stretch: Stretch = { point: latest.point, ...period };
    return {
      sheet: await sheetOf(tx, by, now),
      product: await productOf(tx, latest.productId),
      period: { from: period.from.getTime(), to: period.until.getTime() - 1 },
      controlPoint: { ...headOf(latest.point, latest.content, telling), limits: limitsOf(versions, heat, telling) },
      instruments: await instrumentsAt(tx, controlPointId, period.from, period.until, telling),
      rows: logRows(look, stretch, { ...telling, mass: units === 'US' ? 'lb' : 'kg' }, now),
      reviews: await reviewsOf(tx, stretch, say),
    };
  });
}

function checkPeriod(from: string, to: string): void {
  const days = (Date.parse(to) - Date.parse(from)) / day + 1;
  if (days < 1) throw new Problem('invalid-input', told('last-before-first'), '#/query/to');
  if (days > mostDays) throw new Problem('period-too-long', told('days-asked-for', { count: days }));
}

const productOf = async (tx: Tx, productId: string): Promise<string> => (await productsNow(tx, [productId])).get(productId)?.name ?? '';

type Version = { version: number; productId: string; content: PlanContent; point: ControlPoint };

/** The plan adopted last comes first. */
async function versionsOf(tx: Tx, controlPointId: string): Promise<Version[]> {
  const holder = JSON.stringify({ controlPoints: [{ controlPointId }] });
  const plans = await tx.$queryRaw<{ version: number; productId: string; content: PlanContent }[]>`
    SELECT p.version, p.product_id AS "productId", p.content FROM plan p JOIN plan_adoption a ON a.plan_id = p.id
    WHERE p.content @> ${holder}::jsonb ORDER BY a.seq DESC`;
  return plans.flatMap((plan) => {
    const point = plan.content.controlPoints.find((one) => one.controlPointId === controlPointId);
    return point ? [{ ...plan, point }] : [];
  });
}

/** When versions of the plan differ, each limit names the version it comes from. */
function limitsOf(versions: readonly Version[], unit: TemperatureUnit, { say, limits }: Telling): MonitoredControlPointData['limits'] {
  const said = versions.flatMap(({ version, point }) => point.limits.map(({ limit }) => ({ version, limit, key: canonicalJson(limit) })));
  const distinct = [...new Map(said.reverse().map((one) => [one.key, one])).values()].reverse();
  const isChanged = distinct.length > (versions[0]?.point.limits.length ?? 0);
  return distinct.map(({ version, limit }) => ({
    printed: limits.sayLimit(limit, unit),
    source: limit.source,
    what: isChanged ? say('from-version', { version: String(version) }) : undefined,
  }));
}

async function reviewsOf(tx: Tx, { point, from, until }: Stretch, say: Telling['say']): Promise<StatementData[]> {
  const rows = await tx.$queryRaw<{ code: string; statement: string; by: string; at: Date }[]>`
    SELECT l.code, v.statement, p.name AS by, v.recorded_at AS at
    FROM review v JOIN lot l ON l.id = v.lot_id JOIN person p ON p.id = v.recorded_by
    WHERE v.recorded_at >= ${from} AND v.recorded_at < ${until} AND (
      EXISTS (SELECT FROM reading r WHERE r.lot_id = l.id AND r.control_point_id = ${point.controlPointId}::uuid)
      OR EXISTS (SELECT FROM weighing w WHERE w.lot_id = l.id AND w.control_point_id = ${point.controlPointId}::uuid))
    ORDER BY v.seq`;
  return rows.map(({ code, statement, by, at }) => ({ text: say('lot-statement', { code, statement }), by, at: at.getTime() }));
}
