import * as contract from '@larderbook/contracts';
import { coolingFromCooking } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aPlan, anAdoptedPlan } from '../builders/a-plan';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

// FSIS Compliance Guidelines for Cooling (Appendix B), 1999, option 2: chilling begins within 90 min of cooking.
let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let content: contract.PlanContent;
const minute = 60_000;
const intoId = v7();

beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { chilledBy: coolingFromCooking });
  ({ content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId })));
  await anAdoptedPlan(shop.owner, kitchen.productId, asking());
});
afterAll(() => larder.close());

/** The plan of the kitchen, whose chill follows what asks when chilling began, which follows the cook. */
function asking(changed: (into: contract.ControlPoint) => contract.ControlPoint = (into) => into): contract.PlanContent {
  const chill = content.controlPoints.find(({ name }) => name === 'Chill') as contract.ControlPoint;
  const statement = 'The sausages are in the chiller: chilling begins now.';
  const source = { citation: 'Plan of the establishment', edition: '', confirmed: true };
  const into = changed({
    ...chill,
    controlPointId: intoId,
    name: 'Into the chiller',
    kind: 'prerequisite',
    takenAs: 'attestation',
    probes: [],
    limits: [{ limitId: v7(), limit: { kind: 'attestation', statement, asks: 'moment', source } }],
  });
  const controlPoints = content.controlPoints.flatMap((point) => (point === chill ? [into, { ...chill, follows: intoId }] : [point]));
  return { ...content, controlPoints };
}

const begun = () => larder.clock.now().getTime() - 10 * 60 * minute;
const at = (minutes: number) => new Date(begun() + minutes * minute).toISOString();
type Told = contract.ReplyOf<typeof contract.recordReading>;
const into = (lotId: string, minutes: number, more: object = {}) =>
  ask(kitchen.operator, contract.recordReading, {
    readingId: v7(),
    lotId,
    controlPointId: intoId,
    entered: { answer: true, seen: '' },
    takenAt: at(minutes),
    ...more,
  });
const read = (lotId: string, point: 'cook' | 'chill', minutes: number, value: number) =>
  kitchen.read(lotId, point, { entered: { value, unit: '°F' }, takenAt: at(minutes), sure: true });
const end = (lotId: string, point: 'cook' | 'chill', minutes: number) =>
  done<contract.ReplyOf<typeof contract.endStage>>(
    ask(kitchen.operator, contract.endStage, {
      stageEndId: v7(),
      lotId,
      controlPointId: kitchen.points[point],
      takenAt: at(minutes),
    }),
  );
/** Cooked until minute 0, and read on the bench; below 120 °F only after the hour and a half. */
async function cooked() {
  const { lotId } = await kitchen.startLot({ takenAt: at(-120) });
  await read(lotId, 'cook', -20, 160);
  await read(lotId, 'cook', -10, 160);
  await end(lotId, 'cook', 0);
  await read(lotId, 'chill', 5, 158);
  return lotId;
}
async function chilled(lotId: string) {
  await read(lotId, 'chill', 80, 130);
  await read(lotId, 'chill', 100, 119);
  await read(lotId, 'chill', 360, 55);
  return end(lotId, 'chill', 361);
}
const onLot = async (lotId: string, name: string) =>
  (await kitchen.showLot(lotId)).controlPoints.find(({ controlPoint }) => controlPoint.name === name);
const verdictOf = async (lotId: string) => told((await onLot(lotId, 'Chill'))?.judged[0]?.verdict);

describe('the start of chilling', () => {
  test('that was answered in time is met, though the core fell only later', async () => {
    const lotId = await cooked();
    const { deviationId, flags } = await done<Told>(into(lotId, 20));
    expect([deviationId, flags]).toEqual([undefined, ['recorded-late']]);
    expect((await chilled(lotId)).verdicts).toMatchObject([{ verdict: { kind: 'met' } }]);
    const explained = await done<contract.PointExplained>(
      ask(kitchen.operator, contract.explainPoint, { lotId, controlPointId: kitchen.points.chill }),
    );
    expect(explained.limits[0]?.steps[0]).toMatchObject({
      what: { code: 'chilling-begun' },
      gives: { code: 'chilling-after-cooking', figures: { time: { value: '1200000' } } },
    });
  });

  test('that nobody recorded leaves the chill open, and says which question to answer', async () => {
    const lotId = await cooked();
    const { verdicts } = await chilled(lotId);
    expect(told(verdicts)).toMatchObject([
      {
        verdict: { kind: 'undetermined', next: expect.stringContaining('Answer “Into the chiller” with its time') },
      },
    ]);
    // Recorded at last, with both times beside it.
    await done(into(lotId, 30));
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'met' });
    const [answer] = (await onLot(lotId, 'Into the chiller'))?.readings ?? [];
    expect(answer).toMatchObject({ made: { at: at(30) }, flags: ['recorded-late'] });
    expect(Date.parse(answer?.made.recordedAt ?? '')).toBeGreaterThan(Date.parse(at(360)));
  });

  test('that came a minute late is missed, and opens the deviation with the answer', async () => {
    const lotId = await cooked();
    await chilled(lotId);
    expect(await done<Told>(into(lotId, 91))).toMatchObject({ deviationId: expect.any(String) });
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'missed', margin: '1 min too long' });
  });

  test('is judged by the last of several answers, and a no is no answer', async () => {
    const lotId = await cooked();
    await chilled(lotId);
    await done(into(lotId, 95, { entered: { answer: false, seen: 'still on the bench' } }));
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'undetermined' });
    await done(into(lotId, 20));
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'met' });
    expect(await done<Told>(into(lotId, 95))).toMatchObject({ deviationId: expect.any(String) });
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'missed' });
  });

  test('sent twice is kept once, and sent differently is refused', async () => {
    const lotId = await cooked();
    const readingId = v7();
    const [first, second] = [await into(lotId, 20, { readingId }), await into(lotId, 20, { readingId })];
    expect(second.body).toEqual(first.body);
    expect(await into(lotId, 21, { readingId })).toMatchObject({ status: 409, body: { code: 'sent-differently' } });
    expect((await onLot(lotId, 'Into the chiller'))?.readings).toHaveLength(1);
  });

  test('before cooking ended is doubt until one of the two times is corrected', async () => {
    const lotId = await cooked();
    await chilled(lotId);
    const { readingId } = await done<Told>(into(lotId, -5));
    expect(await verdictOf(lotId)).toMatchObject({
      kind: 'undetermined',
      because: 'Chilling is said to have begun 5 min before cooking ended.',
    });
    await done(into(lotId, 5, { amends: readingId, reason: 'Five past, not five to.' }));
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'met' });
  });

  test('that is voided shows nothing any more', async () => {
    const lotId = await cooked();
    await chilled(lotId);
    const { readingId } = await done<Told>(into(lotId, 20));
    const voiding = { voidId: v7(), what: 'reading' as const, amends: readingId, reason: 'It was the other rack.' };
    await done(ask(kitchen.operator, contract.voidRecord, voiding));
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'undetermined' });
  });

  test('after the core had come down already is judged by its time', async () => {
    const lotId = await cooked();
    await read(lotId, 'chill', 40, 119);
    await read(lotId, 'chill', 360, 55);
    await end(lotId, 'chill', 361);
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'met' });
    const { readingId } = await done<Told>(into(lotId, 60));
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'met' });
    await done(into(lotId, 95, { amends: readingId, reason: 'It stood longer on the bench.' }));
    expect(await verdictOf(lotId)).toMatchObject({
      kind: 'missed',
      margin: '5 min too long',
      because: expect.stringContaining('the core was below 120 °F'),
    });
  });

  test('in the future proves nothing, and a correction of it may name any moment up to its own', async () => {
    const lotId = await cooked();
    await read(lotId, 'chill', 80, 130);
    const { readingId, flags } = await done<Told>(into(lotId, 10 * 60 + 3));
    expect(flags).toContain('in-the-future');
    expect(await verdictOf(lotId)).toMatchObject({
      kind: 'undetermined',
      because: expect.stringContaining('later than that was recorded'),
    });
    await done(into(lotId, 30, { amends: readingId, reason: 'The tablet ran ahead.' }));
    await chilled(lotId);
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'met' });
  });

  test('recorded before the end of cooking counts once that is recorded', async () => {
    const { lotId } = await kitchen.startLot({ takenAt: at(-120) });
    await read(lotId, 'cook', -10, 160);
    await done(into(lotId, 95));
    await read(lotId, 'chill', 100, 130);
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'undetermined' });
    expect(await end(lotId, 'cook', 0)).toMatchObject({ deviationId: expect.any(String) });
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'missed' });
  });

  test('answered again, and later, makes the miss of the open deviation larger', async () => {
    const lotId = await cooked();
    await chilled(lotId);
    const { deviationId = '' } = await done<Told>(into(lotId, 91));
    expect(deviationId).not.toBe('');
    expect(await done<Told>(into(lotId, 120))).toMatchObject({ deviationId });
    expect(await verdictOf(lotId)).toMatchObject({ kind: 'missed', margin: '30 min too long' });
  });

  test('is not recorded by an inspector, nor on a lot of another shop', async () => {
    const lotId = await cooked();
    const reading = {
      readingId: v7(),
      lotId,
      controlPointId: intoId,
      entered: { answer: true, seen: '' },
      takenAt: at(20),
    } as const;
    expect(await ask(await shop.hire('inspector'), contract.recordReading, reading)).toMatchObject({ status: 403 });
    const other = await anotherShop(larder);
    expect(await ask(other.owner, contract.recordReading, reading)).toMatchObject({ status: 404 });
    expect((await onLot(lotId, 'Into the chiller'))?.readings).toEqual([]);
  });

  test('is no temperature', async () => {
    const lotId = await cooked();
    expect(await into(lotId, 20, { entered: { value: 40, unit: '°F' } })).toMatchObject({ status: 422 });
  });
});

describe('a plan', () => {
  const draft = (plan: contract.PlanContent) => aPlan(shop.owner, kitchen.productId, plan);

  test('that does not ask when chilling began warns its adopter', async () => {
    const { incomplete, warnings } = await draft(content);
    expect(incomplete).toEqual([]);
    expect(warnings).toContainEqual(expect.stringMatching(/^Chill: its limit asks how soon chilling begins/));
    expect((await draft(asking())).warnings.join()).not.toContain('how soon chilling begins');
  });

  test('that asks for it, but after no cook, cannot be adopted', async () => {
    const { incomplete } = await draft(asking((point) => ({ ...point, follows: undefined })));
    expect(incomplete).toEqual(['Chill: “Into the chiller” has to follow the cook whose end starts the clock.']);
  });
});
