import * as contract from '@larderbook/contracts';
import { coolingCured, limitSetById, limitOfRow, withPublishedConditions } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { anAdoptedPlan } from '../builders/a-plan';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';
import { told } from '../support/told';

/** Slow cooling of cured product asks for at least 100 ppm ingoing nitrite (FSIS Appendix B 1999, option 3). */
const slow = withPublishedConditions(coolingCured);
const asked = 'at least 100 ppm ingoing sodium nitrite on the meat block';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
beforeAll(async () => {
  larder = await startApp();
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder, { chilledBy: slow });
});
afterAll(() => larder.close());

const g = (value: number) => ({ value, unit: 'g' as const });
const chillOf = ({ controlPoints }: contract.Lot, name = 'Chill') => {
  const point = controlPoints.find(({ controlPoint }) => controlPoint.name === name);
  if (!point) throw new Error(`There is no ${name}`);
  return point;
};
/** Ten kilograms of pork and so much curing salt of 6.25 %: 16 g are exactly 100 ppm. */
async function curedAndCooked(curingSalt: number, of = kitchen) {
  const { lotId } = await of.startLot();
  await of.putIn(lotId);
  const { weighingId } = await of.weighCure(lotId, { weight: g(curingSalt) });
  await aCurve(of, larder, lotId, 'cook', [120, 140, 159, 160]);
  return { lotId, weighingId };
}
const chill = (lotId: string, fahrenheit = [140, 100, 78, 55, 44], of = kitchen) => aCurve(of, larder, lotId, 'chill', fahrenheit);

describe('a chill by an option for cured product alone', () => {
  test('is met with exactly 100 ppm, and its notes say the figures', async () => {
    const { lotId } = await curedAndCooked(16);
    expect(await chill(lotId)).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    const { stands, judged } = chillOf(await kitchen.showLot(lotId));
    expect(stands).toBe('met');
    expect(told(judged[0]?.verdict)?.notes).toContain(`Asked of the formula: ${asked}. There is 100 ppm, 0 ppm to spare: met.`);
  });

  test('is missed with a tenth of a gram less, however good the readings, from the first of them on', async () => {
    const { lotId } = await curedAndCooked(15.9);
    const first = await kitchen.read(lotId, 'chill', { entered: { value: 140, unit: '°F' } });
    const [said] = first.verdicts;
    expect(told(said?.verdict)).toMatchObject({
      kind: 'missed',
      margin: '0.625 ppm short',
      because: `This option may not be used: it asks for ${asked}, and there is 99.375 ppm.`,
    });
    expect(first.deviationId).toBeDefined();
    larder.clock.moveOn(60_000);
    await chill(lotId, [120, 100, 78, 55, 44]);
    const lot = await kitchen.showLot(lotId);
    expect(chillOf(lot)).toMatchObject({ stands: 'missed', openDeviationId: first.deviationId });
    expect(lot).toMatchObject({ standing: 'on-hold' });
    expect(lot.deviations).toHaveLength(1);
  });

  test('is missed where no curing salt was weighed at all', async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
    expect(await chill(lotId)).toMatchObject({ verdicts: [{ verdict: { kind: 'missed' } }] });
  });

  test('is undetermined while no meat is in the lot', async () => {
    const { lotId } = await kitchen.startLot();
    await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
    expect(told(await chill(lotId))).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined', next: 'Put in the meat and weigh the curing salt.' } }],
    });
  });

  test('a weighing corrected after the chill makes it missed, and opens the deviation', async () => {
    const { lotId, weighingId } = await curedAndCooked(24);
    expect(await chill(lotId)).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    const corrected = await kitchen.weighCure(lotId, { weight: g(14), amends: weighingId, reason: 'Misread.' });
    expect(corrected.deviationId).toBeDefined();
    const lot = await kitchen.showLot(lotId);
    expect(chillOf(lot)).toMatchObject({ stands: 'missed', settled: false, openDeviationId: corrected.deviationId });
    expect(told(lot.deviations[0]?.description)).toMatchObject([
      { tells: 'because', point: 'Chill', verdict: { because: expect.stringContaining('87.5 ppm') } },
    ]);
  });

  test('a correction the other way shows it met, but what was opened stays for people to close', async () => {
    const { lotId, weighingId } = await curedAndCooked(14);
    await chill(lotId);
    await kitchen.weighCure(lotId, { weight: g(24), amends: weighingId, reason: 'Written 14 for 24.' });
    const lot = await kitchen.showLot(lotId);
    expect(chillOf(lot).stands).toBe('met');
    expect(lot.standing).toBe('on-hold');
  });

  test('more meat put in afterwards is counted too', async () => {
    const { lotId } = await curedAndCooked(16);
    await chill(lotId);
    const receiptId = await kitchen.receive('pork');
    const more = { inputId: v7(), lotId, receiptId, weight: g(100), takenAt: kitchen.now() };
    const put = await done<contract.ReplyOf<typeof contract.putIn>>(ask(kitchen.operator, contract.putIn, more));
    expect(put.deviationId).toBeDefined();
    expect(chillOf(await kitchen.showLot(lotId)).stands).toBe('missed');
  });

  test('rework brings its nitrite and its meat along', async () => {
    const first = await aSausageLot(kitchen, larder, 'cured');
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId, { sourceLotId: first.lotId, weight: { value: 5, unit: 'kg' } });
    await kitchen.putIn(lotId, { weight: { value: 2, unit: 'kg' } });
    await aCurve(kitchen, larder, lotId, 'cook', [120, 140, 159, 160]);
    await chill(lotId);
    // Of 156.25 ppm in the first lot: 5 kg of it on 7 kg less its curing salt.
    const [judged] = chillOf(await kitchen.showLot(lotId)).judged;
    expect(judged?.verdict).toMatchObject({ kind: 'met' });
    expect(told(judged?.verdict)?.notes.join()).toMatch(/There is 111\.\d+ ppm, .* met\./);
    await kitchen.putIn(lotId, { weight: { value: 1, unit: 'kg' } });
    expect(chillOf(await kitchen.showLot(lotId)).judged[0]?.verdict.kind).toBe('missed');
  });

  test('the plan holds the condition as it was written', async () => {
    const shown = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    const limits = shown.content.controlPoints.flatMap((point) => point.limits.map(({ limit }) => limit.conditions ?? []));
    expect(limits.flat()).toEqual(slow.conditions);
    expect(limits.flat()).toMatchObject([{ kind: 'nitrite', least: 100_000, per: 'meat block' }, { kind: 'support' }]);
  });
});

describe('a condition on the formula, and what the plan says its scales may be wrong by', () => {
  const stating = async (errors: contract.ControlPoint['errors']) => {
    const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    const controlPoints = content.controlPoints.map((point) => (point.takenAs === 'weighings' ? { ...point, errors } : point));
    await anAdoptedPlan(shop.owner, kitchen.productId, { ...content, controlPoints });
  };

  test.each([
    ['16.6 g of which half a gram may not be there', 16.6, { mass: { thousandths: 500, unit: 'g' } } as const, 'met'],
    ['16.4 g of which half a gram may not be there', 16.4, { mass: { thousandths: 500, unit: 'g' } } as const, 'undetermined'],
    ['16.4 g on a scale of which nothing is stated', 16.4, undefined, 'met'],
    ['16.4 g to meat that may be a quarter of a kilogram more', 16.4, { meat: { thousandths: 250, unit: 'kg' } } as const, 'met'],
    ['16.4 g to meat that may be three hundred grams more', 16.4, { meat: { thousandths: 300, unit: 'kg' } } as const, 'undetermined'],
  ])('%s', async (_case, grams, errors, kind) => {
    await stating(errors);
    const { lotId } = await curedAndCooked(grams);
    expect(await chill(lotId)).toMatchObject({ verdicts: [{ verdict: { kind } }] });
    const [judged] = chillOf(await kitchen.showLot(lotId)).judged;
    expect(judged?.verdict.kind).toBe(kind);
    if (kind === 'undetermined')
      expect(told(judged?.verdict)?.because).toMatch(/Within what the scales may be wrong by there may be 99\.\d+ ppm/);
  });
});

describe('conditions that weighings do not answer', () => {
  test('salt in the water phase stays undetermined, saying what to do', async () => {
    const row = limitSetById('australia-new-zealand-2026')?.rows.find(({ id }) => id === 'cooling-simplified-cured');
    if (!row) throw new Error('That row is in the set');
    const elsewhere = await aSausageKitchen(await anotherShop(larder), larder, { chilledBy: limitOfRow(row) });
    const { lotId } = await curedAndCooked(25, elsewhere);
    expect(told(await chill(lotId, [140, 100, 78, 53], elsewhere))).toMatchObject({
      verdicts: [
        {
          verdict: {
            kind: 'undetermined',
            next: 'Say how much salt and water Pork shoulder holds, under its item, or have the product analysed.',
          },
        },
      ],
    });
  });
});

describe('a clock that starts when cooking ends', () => {
  test('is met from the recorded end on, stands as a band from there, and is undetermined without one', async () => {
    const row = limitSetById('united-kingdom-2026')?.rows.find(({ id }) => id === 'cook-chill-cooling');
    if (!row) throw new Error('That row is in the set');
    const elsewhere = await aSausageKitchen(await anotherShop(larder), larder, { chilledBy: limitOfRow(row) });
    const fast = [140, 100, 60, 37];
    const { lotId } = await curedAndCooked(25, elsewhere);
    expect(await chill(lotId, fast, elsewhere)).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    expect(chillOf(await elsewhere.showLot(lotId)).bands).toMatchObject([
      { label: { code: 'from-cooking', figures: { to: { value: '37.4', unit: '°F' } } }, kind: 'met' },
    ]);

    const unfinished = await elsewhere.startLot();
    await elsewhere.putIn(unfinished.lotId);
    await aCurve(elsewhere, larder, unfinished.lotId, 'cook', [120, 140, 159, 160], false);
    expect(told(await chill(unfinished.lotId, fast, elsewhere))).toMatchObject({
      verdicts: [{ verdict: { kind: 'undetermined', next: 'Record the end of cooking.' } }],
    });
  });
});
