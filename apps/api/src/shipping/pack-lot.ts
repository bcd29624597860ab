import { Injectable } from '@nestjs/common';
import type { Flag, InputOf, packLot, ReplyOf } from '@larderbook/contracts';
import { asGiven, flagTimes, gramsText, roundedMass, massOf, scaledBig, useBy } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { rowToCorrect } from '../ledger/row-to-correct';
import { looseToRework, weightsOfLot } from '../lots/lot-weights.queries';
import { productsNow } from '../products/products-now';
import type { Tx } from '../platform/database';
import { dayIn } from '../platform/day-in';
import { femtograms } from '../platform/kept-weight';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { shippedOf } from './packings.queries';
import { checkStillCalledBack } from './still-called-back';
import { roomToPack } from './room-to-pack';

type Input = InputOf<typeof packLot>;

/** A lot may be packed before the review, and shipped only after it. */
@Injectable()
export class PackLot {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof packLot>> {
    const { packingId, lotId, count, net } = input;
    const takenAt = new Date(input.takenAt);

    return this.once.run(by, { id: packingId, kind: 'packing', request: input, happenedAt: input.takenAt }, async (tx, at) => {
      const lot = await findLot(tx, lotId);
      const corrected = await packingToCorrect(tx, input);
      await checkRoom(tx, input, lot, corrected?.mass);
      const code = corrected?.code ?? `${lot.code}-P${(await tx.packingRow.count({ where: { lotId, amendsId: null } })) + 1}`;
      const useByDay = useByOf(input, dayIn(by.establishment.timeZone, takenAt), lot.useByDays);
      const flags = flagsOf(lot, takenAt, corrected?.firstAt ?? at);
      const { count: added } = await tx.packingRow.createMany({
        data: [
          {
            establishmentId: by.establishmentId,
            id: packingId,
            lotId,
            code,
            count,
            flags,
            takenAt,
            netValue: net.value,
            netUnit: net.unit,
            netGrams: gramsText(massOf(net)),
            useBy: new Date(useByDay),
            station: by.station,
            recordedAt: at,
            recordedBy: by.personId,
            ...corrected?.amending,
          },
        ],
        skipDuplicates: true,
      });
      if (added === 0) throw new Problem('sent-differently');
      if (corrected) await checkStillCalledBack(tx, [packingId]);
      return { packingId: corrected?.amending?.firstId ?? packingId, code, useBy: useByDay, flags };
    });
  }
}

/**
 * The corrected weight is available again. Throws `not-found`, and `still-in-use` when more were shipped than the
 * correction says were packed.
 */
async function packingToCorrect(tx: Tx, { lotId, amends, reason, count }: Input) {
  if (!amends) return undefined;
  const row = await tx.packingRow.findFirst({ where: { id: amends, lotId } });
  if (!row) throw new Problem('not-found', told('no-packages-to-correct'));
  const amending = await rowToCorrect(tx, 'packing', { amends, reason });
  const shipped = await shippedOf(tx, row.firstId ?? row.id);
  if (count < shipped) throw new Problem('still-in-use', told('packages-were-shipped', { count: shipped, code: row.code }));
  const first = row.firstId ? await tx.packingRow.findFirst({ where: { id: row.firstId } }) : row;
  return { amending, code: row.code, firstAt: first?.recordedAt, mass: femtograms(row.netGrams) * BigInt(row.count) };
}

type Lot = Awaited<ReturnType<typeof findLot>>;

async function findLot(tx: Tx, lotId: string) {
  const lot = await tx.lot.findFirst({
    where: { id: lotId },
    select: {
      code: true,
      takenAt: true,
      productId: true,
      formula: { select: { expectedYieldPercent: true } },
      packings: { select: { id: true }, where: { shipmentLines: { some: {} } }, take: 1 },
    },
  });
  const product = lot && (await productsNow(tx, [lot.productId])).get(lot.productId);
  if (!product) throw new Problem('not-found', told('no-such-lot'));
  return { ...lot, useByDays: product.useByDays, hasShipped: lot.packings.length > 0 };
}

/** Days are written so that they sort as text. */
function useByOf({ useBy: given }: Input, packedOn: string, days: number): string {
  if (given === undefined) return useBy(packedOn, days);
  if (given >= packedOn) return given;
  throw new Problem('invalid-input', told('use-by-before-packing', { useBy: { day: given }, packed: { day: packedOn } }), '#/useBy');
}

/** Throws `more-than-there-is` with what went in, what left and what is packed already. */
async function checkRoom(tx: Tx, { lotId, count, net }: Input, lot: Lot, givenBack = 0n): Promise<void> {
  const now = await weightsOfLot(tx, lotId);
  const weights = { ...now, packed: now.packed - givenBack };
  const room = roomToPack(weights, scaledBig(lot.formula.expectedYieldPercent.toNumber(), 4) ?? 0n);
  const asked = massOf(net) * BigInt(count);
  if (asked <= room) return;

  const unit = net.unit === 'g' || net.unit === 'kg' ? 'kg' : 'lb';
  const figure = (mass: bigint) => roundedMass(mass < 0n ? 0n : mass, unit, 3, 'down');
  const figures = {
    count: String(count),
    net: asGiven(net.value, net.unit),
    asked: roundedMass(asked, unit, 3, 'up'),
    code: lot.code,
    left: figure(room),
    wentIn: figure(weights.wentIn),
    leftTheLot: figure(weights.removed + weights.condemned + weights.reworked),
    packed: figure(weights.packed),
  };
  const toRework = looseToRework(weights);
  const aside = toRework > 0n ? [told('so-much-to-rework', { toRework: figure(toRework) })] : [];
  throw new Problem('more-than-there-is', [told('no-room-to-pack', figures), ...aside]);
}

const flagsOf = (lot: Lot, takenAt: Date, recordedAt: Date): Flag[] => [
  ...flagTimes({ takenAt: takenAt.getTime(), recordedAt: recordedAt.getTime(), lotStartedAt: lot.takenAt.getTime() }),
  ...(lot.hasShipped ? (['lot-shipped-already'] as const) : []),
];
