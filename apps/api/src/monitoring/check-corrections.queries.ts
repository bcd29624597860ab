import type { Correction } from '@larderbook/contracts';
import { correctionsOf, figureOf, momentOf, typed, type Told } from '../ledger/corrections-of';
import { madeBy, type PersonNames } from '../shop/person-names';
import { named } from '../platform/account';
import type { Tx } from '../platform/database';

/** Oldest first. */
export async function checkCorrections(
  tx: Tx,
  instrumentIds: readonly string[],
  people: PersonNames,
): Promise<(instrumentId: string) => Correction[]> {
  const of = { instrumentId: { in: [...instrumentIds] } };
  const corrected = await tx.calibrationRow.findMany({ where: { ...of, amendsId: { not: null } } });
  const firsts = await tx.calibrationRow.findMany({ where: { id: { in: corrected.flatMap(({ firstId }) => firstId ?? []) } } });
  const rows = [...firsts, ...corrected];
  return (instrumentId) =>
    correctionsOf(
      'calibration',
      rows.filter((row) => row.instrumentId === instrumentId),
      ({ recordedBy, recordedAt, station }) => madeBy({ recordedBy, recordedAt, station }, people),
      tell,
    );
}

type Row = {
  method: string;
  expected: { toString(): string };
  observed: { toString(): string };
  unit: string;
  action: string;
  takenAt: Date;
};

const tell = ({ method, expected, observed, unit, action, takenAt }: Row): Told => ({
  what: named('entry-check'),
  says: [
    [named('says-method'), typed(method)],
    [named('says-expected'), figureOf(expected, unit)],
    [named('says-observed'), figureOf(observed, unit)],
    [named('says-action'), typed(action)],
    [named('says-time'), momentOf(takenAt)],
  ],
});
