import type { MonitoringRowData, CheckNotDoneData, JudgedCurveData, MonitoredReadingData } from '@larderbook/documents';
import type { MassUnit } from '@larderbook/haccp';
import type { Look } from '../ledger/entries';
import { clarificationsOf, saidByReading } from '../lots/clarifications.queries';
import { checksOfInstruments } from '../lots/instrument-flags';
import { personNames } from '../shop/person-names';
import type { Tx } from '../platform/database';
import { productsNow } from '../products/products-now';
import { checksNotMade } from './checks-not-made.queries';
import { clarified } from './clarified';
import { corrected } from './corrected';
import { ingoingAt } from './ingoing-in-log';
import { verdictsOfCurves } from './log-curves.queries';
import { deviationNumbers } from './log-deviations.queries';
import { judgedNow } from './log-judged';
import { curveOf, rowOf } from './log-row';
import { earlierEntries, loggedEntries, type Cursor, type Stretch, type Wanted } from './logged-entries.queries';
import type { Logged } from './logged-rows.queries';
import type { Telling } from './telling';

/** `mass` is the unit in which the shop weighs meat. */
type SayHere = Telling & { mass: MassUnit };

/** Each batch is a short look of its own. Checks not made stand where they were due. */
export async function* logRows(look: Look, stretch: Stretch, say: SayHere, now: Date, batch = 400): AsyncGenerator<MonitoringRowData> {
  const missing = await look((tx) => checksNotMade(tx, stretch));
  let after: Cursor | undefined;
  for (;;) {
    const entries = await look((tx) => readBatch(tx, { ...stretch, after, most: batch }, say, now));
    for (const { row, curve, cursor } of entries) {
      yield* takeBefore(missing, row.at);
      yield row;
      if (curve) yield curve;
      after = cursor;
    }
    if (entries.length < batch) break;
  }
  yield* missing;
}

function* takeBefore(missing: CheckNotDoneData[], at: number): Generator<CheckNotDoneData> {
  while (missing[0] && missing[0].dueAt <= at) yield missing.shift() as CheckNotDoneData;
}

/** `curve` follows the last reading of a curve. */
type Entry = { row: MonitoredReadingData; curve?: JudgedCurveData; cursor: Cursor };

async function readBatch(tx: Tx, wanted: Wanted, { mass, ...telling }: SayHere, now: Date): Promise<Entry[]> {
  const { point } = wanted;
  const names = await personNames(tx);
  const logged = await loggedEntries(tx, wanted, names);
  const earlier = await earlierEntries(tx, point, logged, names);
  const products = await productsNow(tx, [...new Set(logged.map(({ productId }) => productId))]);
  const instrumentIds = [...new Set(logged.flatMap(({ instrumentId }) => instrumentId ?? []))];
  const instruments = await instrumentNames(tx, instrumentIds);
  const checks = await checksOfInstruments(tx, instrumentIds);
  const curves = await verdictsOfCurves(tx, point, logged, { now, tell: telling.tell });
  const numberOf = await deviationNumbers(tx, point, logged, telling.say);
  const judgedOf = await judgedNow(tx, point, logged);
  const ingoing = await ingoingAt(tx, point, logged, { unit: mass, now, telling });
  const lotIds = [...new Set(logged.map(({ lotId }) => lotId))];
  const saidOf = saidByReading(await clarificationsOf(tx, lotIds), names);

  const all = [
    ...earlier.map((entry) => ({ ...entry, amendedBy: 'later' })),
    ...logged.map((entry) => ({ ...entry, judged: judgedOf(entry) })),
  ];
  return corrected<Logged & { amendedBy?: string }>(all, ({ id }) => id).map((one) => {
    const { entry } = one;
    const told = rowOf(one, { point, checks, telling });
    const row = { ...told, ...(told.struck ? {} : ingoing(entry)), product: products.get(entry.productId)?.name };
    const verdict = curves.get(entry.id);
    return {
      cursor: { at: new Date(entry.made.at), id: entry.struckBy?.voided ? entry.struckBy.id : entry.id },
      curve: verdict && curveOf(row, verdict, numberOf(entry)),
      row: {
        ...row,
        ...clarified(saidOf.get(entry.id)),
        instrument: instruments.get(entry.instrumentId ?? ''),
        deviation: row.verdict?.kind === 'missed' ? numberOf(entry) : undefined,
      },
    };
  });
}

async function instrumentNames(tx: Tx, ids: string[]): Promise<ReadonlyMap<string, string>> {
  const found = await tx.instrument.findMany({ where: { id: { in: ids } }, select: { id: true, name: true } });
  return new Map(found.map(({ id, name }) => [id, name]));
}
