import * as contract from '@larderbook/contracts';
import type { EnteredMass } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { ask } from '../support/ask';
import type { TestApp } from '../support/start-app';
import type { SausageKitchen } from './a-sausage-kitchen';
import { done } from './a-shop';

const minute = 60_000;

/** How far a lot has come: what the floor recorded of it, everything met. */
export type Reached = 'cured' | 'cooked' | 'chilled' | 'labelled' | 'packed' | 'reviewed' | 'shipped';
const way: Reached[] = ['cured', 'cooked', 'chilled', 'labelled', 'packed', 'reviewed', 'shipped'];

type Weights = { meat: EnteredMass; cure: EnteredMass; packages: { count: number; net: EnteredMass } };
/** Ten kilograms, ten packages of 800 g. */
const usual: Weights = {
  meat: { value: 10, unit: 'kg' },
  cure: { value: 25, unit: 'g' },
  packages: { count: 10, net: { value: 800, unit: 'g' } },
};

/** One lot, taken as far as is said; the clock goes with it. */
export async function aSausageLot(
  kitchen: SausageKitchen,
  larder: Pick<TestApp, 'clock'>,
  reached: Reached,
  { meat, cure, packages } = usual,
) {
  const { lotId, code } = await kitchen.startLot();
  const packingId = v7();
  const steps: Record<Reached, () => Promise<unknown>> = {
    cured: async () => {
      await kitchen.putIn(lotId, { weight: meat });
      await kitchen.weighCure(lotId, { weight: cure });
    },
    cooked: () => aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]),
    chilled: () => aCurve(kitchen, larder, lotId, 'chill', [140, 100, 78, 55, 39]),
    labelled: async () => {
      await kitchen.read(lotId, 'coldRoom', { entered: { value: 36, unit: '°F' } });
      await kitchen.read(lotId, 'label', { entered: { answer: true, seen: 'Label 12 on the roll.' } });
    },
    packed: () =>
      done(
        ask(kitchen.operator, contract.packLot, {
          packingId,
          lotId,
          ...packages,
          takenAt: kitchen.now(),
        }),
      ),
    reviewed: () => done(ask(kitchen.reviewer, contract.signReview, { reviewId: v7(), lotId, statement: 'Complete and met.' })),
    shipped: () => ship(kitchen, packingId, 10),
  };
  for (const step of way.slice(0, way.indexOf(reached) + 1)) {
    await steps[step]();
    larder.clock.moveOn(minute);
  }
  return { lotId, code, packingId };
}

/** Core temperatures in °F, twenty minutes apart, and the word that it is finished. */
export async function aCurve(
  kitchen: SausageKitchen,
  { clock }: Pick<TestApp, 'clock'>,
  lotId: string,
  point: 'cook' | 'chill',
  fahrenheit: number[],
  ended = true,
) {
  for (const value of fahrenheit) {
    await kitchen.read(lotId, point, { entered: { value, unit: '°F' } });
    clock.moveOn(20 * minute);
  }
  if (!ended) return undefined;
  const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points[point], takenAt: kitchen.now() };
  return done<contract.ReplyOf<typeof contract.endStage>>(ask(kitchen.operator, contract.endStage, end));
}

/** Packages of a run go to a customer. */
export async function ship({ operator, now }: SausageKitchen, packingId: string, count: number): Promise<void> {
  const customerId = v7();
  await done(ask(operator, contract.recordCustomer, { customerId, name: 'Fenwick Deli', address: '', contact: '' }));
  await done(
    ask(operator, contract.recordShipment, {
      shipmentId: v7(),
      customerId,
      document: '',
      lines: [{ packingId, count }],
      takenAt: now(),
    }),
  );
}
