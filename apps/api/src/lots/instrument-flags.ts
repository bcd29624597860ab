import type { Flag } from '@larderbook/contracts';
import { calibrationDue } from '@larderbook/haccp';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

/** A check speaks for no value taken before it was first entered. */
export type Check = { takenAt: Date; kind: string | null; enteredAt: Date };
export type ChecksOf = { checkEveryDays: number; checks: readonly Check[] };

/** The last check before this moment: of all, and of those entered by then. */
export async function lastChecksOf(tx: Tx, instrumentId: string | undefined, takenAt: Date): Promise<ChecksOf | undefined> {
  if (!instrumentId) return undefined;
  const [found] = await tx.$queryRaw<{ checkEveryDays: number; checks: Said[] }[]>`
    SELECT i.check_every_days AS "checkEveryDays", coalesce(c.checks, '[]') AS checks FROM instrument i
    LEFT JOIN LATERAL (
      SELECT json_agg(json_build_object('takenAt', x.taken_at, 'kind', x.verdict ->> 'kind', 'enteredAt', x.first_recorded_at)
        ORDER BY x.taken_at, x.seq) AS checks
      FROM (
        (SELECT n.* FROM calibration_now n WHERE n.instrument_id = i.id AND n.taken_at <= ${takenAt}
          ORDER BY n.taken_at DESC, n.seq DESC LIMIT 1)
        UNION
        (SELECT n.* FROM calibration_now n WHERE n.instrument_id = i.id AND n.taken_at <= ${takenAt}
          AND n.first_recorded_at <= ${takenAt} ORDER BY n.taken_at DESC, n.seq DESC LIMIT 1)
      ) x
    ) c ON true
    WHERE i.id = ${instrumentId}::uuid`;
  return found && { ...found, checks: found.checks.map(asCheck) };
}

type Said = { takenAt: string; kind: string | null; enteredAt: string };
const asCheck = ({ takenAt, kind, enteredAt }: Said): Check => ({
  kind,
  takenAt: new Date(takenAt),
  enteredAt: new Date(enteredAt),
});

/** A failed last check counts as overdue. Throws `not-found`. */
export function checkFlags(instrumentId: string | undefined, known: ChecksOf | undefined, takenAt: Date): Flag[] {
  if (!instrumentId) return ['instrument-unknown'];
  if (!known) throw new Problem('not-found', told('no-such-instrument'));
  if (isOverdue(known, takenAt)) return ['instrument-overdue'];
  return isOverdue(knownAt(known, takenAt), takenAt) ? ['instrument-checked-later'] : [];
}

const knownAt = ({ checks, ...rest }: ChecksOf, at: Date): ChecksOf => ({
  ...rest,
  checks: checks.filter(({ enteredAt }) => enteredAt <= at),
});

/** Also true when the last check failed. */
export function isOverdue({ checkEveryDays, checks }: ChecksOf, at: Date): boolean {
  const last = checks.filter(({ takenAt }) => takenAt <= at).at(-1);
  if (last?.kind !== 'met') return true;
  const since = Math.min(last.takenAt.getTime(), last.enteredAt.getTime()); // nobody checks ahead of time
  return calibrationDue(since, checkEveryDays, at.getTime()).isOverdue;
}

type Entered = { instrumentId: string | null; takenAt: Date; recordedAt: Date; flags: string[] };

/** A check corrected, voided or failed later may add a flag; none is ever taken away. */
export function flagsNow(entry: Entered, checksOf: ReadonlyMap<string, ChecksOf>): string[] {
  const known = entry.instrumentId ? checksOf.get(entry.instrumentId) : undefined;
  if (!known) return entry.flags;
  const next = known.checks.find(({ takenAt }) => takenAt > entry.takenAt);
  const failed = next && next.kind !== 'met' ? ['instrument-failed-later'] : [];
  return [...checkedThen(entry, known), ...failed];
}

function checkedThen({ takenAt, recordedAt, flags }: Entered, known: ChecksOf): string[] {
  const was = flags.includes('instrument-overdue');
  if (!was && isOverdue(knownAt(known, recordedAt), takenAt)) return [...flags, 'instrument-overdue'];
  const said = flags.includes('instrument-checked-later');
  return was && !said && !isOverdue(known, takenAt) ? [...flags, 'instrument-checked-later'] : flags;
}

/** Oldest first. */
export async function checksOfInstruments(tx: Tx, ids: readonly string[]): Promise<ReadonlyMap<string, ChecksOf>> {
  if (ids.length === 0) return new Map();
  const rows = await tx.instrument.findMany({
    where: { id: { in: [...new Set(ids)] } },
    select: {
      id: true,
      checkEveryDays: true,
      calibrations: {
        select: { takenAt: true, verdict: true, firstRecordedAt: true },
        orderBy: [{ takenAt: 'asc' }, { seq: 'asc' }],
      },
    },
  });
  return new Map(
    rows.map(({ id, checkEveryDays, calibrations }) => [
      id,
      {
        checkEveryDays,
        checks: calibrations.map(({ takenAt, verdict, firstRecordedAt: enteredAt }) => ({
          takenAt,
          enteredAt,
          kind: (verdict as { kind?: string } | null)?.kind ?? null,
        })),
      },
    ]),
  );
}
