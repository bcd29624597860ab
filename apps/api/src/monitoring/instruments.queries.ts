import {
  instrumentKinds,
  type instrumentUnits,
  type Correction,
  type listInstruments as contract,
  type ReplyOf,
} from '@larderbook/contracts';
import { calibrationDue, type Verdict } from '@larderbook/haccp';
import type { Prisma } from '../generated/prisma/client';
import { checkCorrections } from './check-corrections.queries';
import { isOverdue, type Check } from '../lots/instrument-flags';
import { madeBy, personNames, type PersonNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { verdictAsKept } from '../platform/kept-verdict';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

export type Instrument = ReplyOf<typeof contract>['instruments'][number];

const withLastCheck = {
  calibrations: { orderBy: [{ takenAt: 'desc' }, { seq: 'desc' }], take: 1 },
} satisfies Prisma.InstrumentInclude;
type Row = Prisma.InstrumentGetPayload<{ include: typeof withLastCheck }>;

/** Sorted by name. */
export async function listInstruments(tx: Tx, now: Date): Promise<Instrument[]> {
  const rows = await tx.instrument.findMany({ include: withLastCheck, orderBy: { name: 'asc' } });
  const names = await personNames(tx);
  const corrections = await checkCorrections(
    tx,
    rows.map(({ id }) => id),
    names,
  );
  return rows.map((row) => toInstrument(row, names, now, corrections(row.id)));
}

/** Throws `not-found`. */
export async function showInstrument(tx: Tx, instrumentId: string, now: Date): Promise<Instrument> {
  const row = await tx.instrument.findFirst({ where: { id: instrumentId }, include: withLastCheck });
  if (!row) throw new Problem('not-found', told('no-such-instrument'));
  const names = await personNames(tx);
  const corrections = await checkCorrections(tx, [instrumentId], names);
  return toInstrument(row, names, now, corrections(instrumentId));
}

function toInstrument(row: Row, names: PersonNames, now: Date, corrections: Correction[]): Instrument {
  const [last] = row.calibrations;
  const verdict = last && verdictAsKept(last.verdict);
  const isGood = verdict?.kind === 'met';
  const { dueAt } = calibrationDue(isGood ? last?.takenAt.getTime() : undefined, row.checkEveryDays, now.getTime());
  return {
    instrumentId: row.id,
    name: row.name,
    kind: instrumentKinds.find((kind) => kind === row.kind) ?? 'other',
    unit: row.unit as Unit,
    tolerance: row.tolerance.toNumber(),
    checkEveryDays: row.checkEveryDays,
    lastCheck: last &&
      verdict && {
        calibrationId: last.id,
        rowId: last.rowId,
        method: last.method,
        expected: last.expected.toNumber(),
        observed: last.observed.toNumber(),
        unit: last.unit as Unit,
        verdict,
        action: last.action,
        made: madeBy(last, names),
      },
    corrections,
    dueAt: dueAt === undefined ? undefined : new Date(dueAt).toISOString(),
    overdue: isOverdue({ checkEveryDays: row.checkEveryDays, checks: last && verdict ? [asCheck(last, verdict)] : [] }, now),
  };
}

type Unit = (typeof instrumentUnits)[number];

const asCheck = ({ takenAt, firstRecordedAt: enteredAt }: Row['calibrations'][number], { kind }: Verdict): Check => ({
  takenAt,
  enteredAt,
  kind,
});
