import { recordsMoment, type InputOf, type voidRecord } from '@larderbook/contracts';
import { entryToAmend } from '../lots/entry-to-amend';
import { holdStays } from '../lots/hold-stays';
import { judgeControlPoint } from '../lots/judge-control-point';
import { wentInFor } from '../lots/judge-formulation';
import { judgeWhatWentIn } from '../lots/judge-what-went-in';
import { lotToRecordOn } from '../lots/lot-to-record-on';
import { openForMisses } from '../lots/open-for-misses';
import { checkStillThere } from '../lots/take-from';
import { judgeFollowers } from '../monitoring/judge-followers';
import { clockOf, lotAtPoint } from '../monitoring/readings.queries';
import type { Tx } from '../platform/database';
import { femtograms } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';

type Input = InputOf<typeof voidRecord>;
type OnLot = 'reading' | 'input' | 'weighing';
type Entry = { lotId: string; subjectId: string; takenAt: Date };

/** Returns the deviation that this opened, if any. */
export async function voidOnLot(tx: Tx, input: Input, what: OnLot, by: Person, at: Date): Promise<string | undefined> {
  switch (what) {
    case 'reading':
      return voidReading(tx, input, by, at);
    case 'input':
      return voidInput(tx, input, by, at);
    case 'weighing':
      return voidWeighing(tx, input, by, at);
  }
}

/** A voiding row copies the entry, under a line of its own in the ledger, and counts for nothing. */
const struck = ({ voidId: id, amends: amendsId, reason }: Input, by: Person, at: Date) => ({
  ...{ id, amendsId, reason, voided: true, flags: [], seq: undefined },
  ...{ station: by.station, recordedAt: at, recordedBy: by.personId },
});

async function voidReading(tx: Tx, input: Input, by: Person, at: Date): Promise<string | undefined> {
  const { judged: _, humidity, ...row } = await entryToVoid(input, (where) => tx.reading.findFirst({ where }));
  await tx.reading.create({ data: { ...row, humidity: humidity ?? undefined, judged: [], ...struck(input, by, at) } });

  const lot = await lotAtPoint(tx, row.lotId, row.controlPointId);
  const { point, piece, curve: readings } = lot;
  const followers = recordsMoment(point) ? await judgeFollowers(tx, row.lotId, row.controlPointId, at) : [];
  if (point.takenAs !== 'curve') return openForMisses(tx, entryOf(row, input), followers, by, at);
  const wentIn = await wentInFor(tx, row.lotId, point);
  const { judged } = judgeControlPoint(point, { readings, wentIn, piece, ...clockOf(lot, at) });
  return openForMisses(tx, entryOf(row, input), [{ point, judged }], by, at);
}

async function voidInput(tx: Tx, input: Input, by: Person, at: Date): Promise<string | undefined> {
  const row = await entryToVoid(input, (where) => tx.lotInput.findFirst({ where }));
  await checkStillThere(tx, row.lotId, femtograms(row.trimmedGrams), row.trimmedUnit, 'nothing');
  await holdStays(tx, row.lotId, () => tx.lotInput.create({ data: { ...row, ...struck(input, by, at) } }));
  return judgeWithout(tx, entryOf(row, input), by, at);
}

async function voidWeighing(tx: Tx, input: Input, by: Person, at: Date): Promise<string | undefined> {
  const { judged: _, ...row } = await entryToVoid(input, (where) => tx.weighing.findFirst({ where }));
  await checkStillThere(tx, row.lotId, femtograms(row.grams), row.weightUnit, 'nothing');
  const voided = { ...row, judged: [], ...struck(input, by, at) };
  await holdStays(tx, row.lotId, () => tx.weighing.create({ data: voided }));
  return judgeWithout(tx, entryOf(row, input), by, at);
}

async function judgeWithout(tx: Tx, entry: Entry, by: Person, at: Date): Promise<string | undefined> {
  const { controlPoints } = await lotToRecordOn(tx, entry.lotId);
  return (await judgeWhatWentIn(tx, entry, controlPoints, by, at)).deviationId;
}

const entryOf = ({ lotId, takenAt }: { lotId: string; takenAt: Date }, { voidId: subjectId }: Input): Entry => ({
  lotId,
  subjectId,
  takenAt,
});

/** Throws `not-found`, or `already-amended` when corrected or voided since it was seen. */
async function entryToVoid<Row extends { lotId: string; voided: boolean | null }>(
  { amends, reason }: Input,
  find: (where: { id: string } | { amendsId: string }) => Promise<Row | null>,
): Promise<Row> {
  const row = await find({ id: amends });
  if (!row) throw new Problem('not-found', told('no-such-entry'));
  if (row.voided) throw new Problem('already-amended', told('was-voided'));
  await entryToAmend({ amends, reason, lotId: row.lotId }, find);
  return row;
}
