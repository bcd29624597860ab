import { instrumentKinds, type listInstruments as contract, type ReplyOf } from '@larderbook/contracts';
import { calibrationDue, type Verdict } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';
import { isOverdue } from '../lots/instrument-flags';
import { madeBy, personNames, type PersonNames } from '../people/person-names';
import type { Tx } from '../platform/database';
import { Problem } from '../platform/problem';

export type Instrument = ReplyOf<typeof contract>['instruments'][number];

const withLastCheck = {
  calibrations: { orderBy: [{ takenAt: 'desc' }, { recordedAt: 'desc' }], take: 1 },
} satisfies Prisma.InstrumentInclude;
type Row = Prisma.InstrumentGetPayload<{ include: typeof withLastCheck }>;

/** Every instrument with its last check, by name. `now` tells which are overdue. */
export async function listInstruments(tx: Tx, now: Date): Promise<Instrument[]> {
  const rows = await tx.instrument.findMany({ include: withLastCheck, orderBy: { name: 'asc' } });
  const names = await personNames(tx);
  return rows.map((row) => toInstrument(row, names, now));
}

/** Throws `not-found`. */
export async function showInstrument(tx: Tx, instrumentId: string, now: Date): Promise<Instrument> {
  const row = await tx.instrument.findFirst({ where: { id: instrumentId }, include: withLastCheck });
  if (!row) throw new Problem('not-found', { detail: 'There is no such instrument in this shop.' });
  return toInstrument(row, await personNames(tx), now);
}

function toInstrument(row: Row, names: PersonNames, now: Date): Instrument {
  const [last] = row.calibrations;
  const verdict = last && (last.verdict as unknown as Verdict);
  const isGood = verdict?.kind === 'met';
  const { dueAt } = calibrationDue(isGood ? last?.takenAt.getTime() : undefined, row.checkEveryDays, now.getTime());
  return {
    instrumentId: row.id,
    name: row.name,
    kind: instrumentKinds.find((kind) => kind === row.kind) ?? 'other',
    unit: row.unit,
    tolerance: row.tolerance.toNumber(),
    checkEveryDays: row.checkEveryDays,
    lastCheck: last &&
      verdict && {
        calibrationId: last.id,
        method: last.method,
        expected: last.expected.toNumber(),
        observed: last.observed.toNumber(),
        unit: last.unit,
        verdict,
        action: last.action,
        made: madeBy(last, names),
      },
    dueAt: dueAt === undefined ? undefined : new Date(dueAt).toISOString(),
    overdue: isOverdue(
      { checkEveryDays: row.checkEveryDays, takenAt: last?.takenAt ?? null, kind: verdict?.kind ?? null },
      now,
    ),
  };
}
