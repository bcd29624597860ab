import * as contract from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot, ship } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop } from '../builders/a-shop';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;

beforeAll(async () => {
  larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
});
afterAll(() => larder.close());

type Reply = Awaited<ReturnType<typeof ask>>;
const said = ({ status, body }: Reply) => [status, body.code, body.detail];
const code = (reply: Reply) => said(reply).slice(0, 2);
const kg = (value: number) => ({ value, unit: 'kg' as const });
const g = (value: number) => ({ value, unit: 'g' as const });

describe('starting a lot', () => {
  const start = (fields: object = {}, by = kitchen.operator) =>
    ask(by, contract.startLot, {
      lotId: v7(),
      productId: kitchen.productId,
      note: '',
      takenAt: kitchen.now(),
      ...fields,
    });

  test('gives it the next code of the day by the pattern of the shop', async () => {
    const takenAt = '2026-02-10T15:00:00Z'; // the 41st day of the year
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26041-1');
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26041-2');
  });

  test('counts the day on the clock of the shop, not of Greenwich', async () => {
    const takenAt = '2026-02-12T05:59:00Z'; // one minute to midnight on the 11th in the shop
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26042-1');
  });

  test('goes past a code that was given by hand', async () => {
    const takenAt = '2026-02-14T15:00:00Z';
    await done(start({ takenAt, code: '26045-1' }));
    expect((await done<{ code: string }>(start({ takenAt, code: '26045-3' }))).code).toBe('26045-3');
    expect((await done<{ code: string }>(start({ takenAt }))).code).toBe('26045-4');
  });

  test('refuses a code that is taken', async () => {
    await done(start({ code: 'EASTER' }));
    expect(said(await start({ code: 'easter' }))).toEqual([409, 'lot-code-taken', 'There is a lot EASTER already.']);
  });

  test('two lots started at the same moment get two codes', async () => {
    const takenAt = '2026-02-16T15:00:00Z';
    const codes = await Promise.all(
      [start({ takenAt }), start({ takenAt })].map((reply) => done<{ code: string }>(reply)),
    );
    expect(codes.map((lot) => lot.code).sort()).toEqual(['26047-1', '26047-2']);
  });

  test('needs a formula and an adopted plan', async () => {
    const productId = v7();
    const product = {
      name: 'Brawn',
      code: 'BRW',
      process: 'other',
      species: 'pork',
      storage: '',
      useByDays: 5,
    } as const;
    await done(ask(shop.owner, contract.recordProduct, { productId, ...product }));
    expect(code(await start({ productId }))).toEqual([409, 'no-formula']);
    const lines = [{ part: 'meat' as const, itemId: kitchen.items.pork, percent: 100 }];
    await done(
      ask(shop.owner, contract.recordFormula, { formulaId: v7(), productId, expectedYieldPercent: 90, lines }),
    );
    expect(code(await start({ productId }))).toEqual([409, 'no-plan-in-force']);
    expect(code(await start({ productId: v7() }))).toEqual([404, 'not-found']);
  });

  test('is not for the inspector, nor for another shop', async () => {
    expect(code(await start({}, await shop.hire('inspector')))).toEqual([403, 'not-allowed']);
    const other = await anotherShop(larder);
    expect(code(await start({}, other.owner))).toEqual([404, 'not-found']);
  });

  test('is not dated tomorrow', async () => {
    expect(code(await start({ takenAt: '2026-03-03T08:00:00Z' }))).toEqual([422, 'in-the-future']);
  });
});

describe('putting meat in', () => {
  const put = async (fields: object) =>
    ask(kitchen.operator, contract.putIn, {
      inputId: v7(),
      lotId: (await kitchen.startLot()).lotId,
      weight: kg(10),
      takenAt: kitchen.now(),
      ...fields,
    });

  test('the meat block is what went in after trimming, not what was bought', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    expect(
      await kitchen.putIn(lotId, {
        receiptId,
        weight: { value: 22.5, unit: 'lb' },
        trimmed: { value: 20, unit: 'lb' },
      }),
    ).toMatchObject({ meatBlockGrams: 9071.8474 });
    expect(await kitchen.putIn(lotId, { receiptId, weight: kg(1) })).toMatchObject({ meatBlockGrams: 10071.8474 });
    expect((await kitchen.showLot(lotId)).targets).toMatchObject([
      { itemName: 'Pork shoulder', weighedGrams: 10071.8474 },
      { targetGrams: 161.1495584 },
      { targetGrams: 25.1, maxGrams: expect.closeTo(25.1796185, 6) },
    ]);
  });

  test('more than is left of a delivery is refused, with the figures in the unit that was entered', async () => {
    const receiptId = await kitchen.receive('pork', { weight: kg(15) });
    await done(put({ receiptId, weight: kg(12) }));
    const reply = await put({ receiptId, weight: { value: 7, unit: 'lb' } });
    expect(code(reply)).toEqual([422, 'more-than-there-is']);
    expect(reply.body.detail).toMatch(/^6\.613 lb are left of R-\d{4}, 7 lb were asked for\.$/);
    await done(put({ receiptId, weight: kg(3) }));
    expect(code(await put({ receiptId, weight: g(0.001) }))).toEqual([422, 'more-than-there-is']);
  });

  test('of two that would take the rest at the same moment, one gets it', async () => {
    const receiptId = await kitchen.receive('pork', { weight: kg(10) });
    const replies = await Promise.all([put({ receiptId, weight: kg(6) }), put({ receiptId, weight: kg(6) })]);
    expect(replies.map(({ status }) => status).sort()).toEqual([200, 422]);
    const { leftGrams } = await done<contract.Receipt>(ask(kitchen.operator, contract.showReceipt, { receiptId }));
    expect(leftGrams).toBe(4000);
  });

  test('a refused delivery may not be used', async () => {
    const receiptId = await kitchen.receive('pork', { decision: 'refused', reason: 'Torn bags.' });
    expect(code(await put({ receiptId }))).toEqual([422, 'receipt-refused']);
  });

  test('salt is no meat', async () => {
    const receiptId = await kitchen.receive('salt');
    const [, problem, detail] = said(await put({ receiptId }));
    expect([problem, detail]).toEqual(['wrong-item', expect.stringMatching(/^R-\d{4} is Salt, which is no meat\./)]);
  });

  test('more after trimming than was taken is refused', async () => {
    const reply = await put({
      receiptId: await kitchen.receive('pork'),
      weight: kg(4),
      trimmed: { value: 9, unit: 'lb' },
    });
    expect(said(reply)).toEqual([
      422,
      'trimmed-exceeds-taken',
      '4 kg were taken, and 9 lb are said to be left after trimming.',
    ]);
  });

  test.each([
    ['a weight of zero', { weight: kg(0) }, '#/weight/value'],
    ['a weight below zero', { weight: kg(-1) }, '#/weight/value'],
    ['four decimals', { weight: kg(1.2345) }, '#/weight/value'],
    ['stones', { weight: { value: 2, unit: 'st' } }, '#/weight/unit'],
    ['a trimmed weight of zero', { trimmed: kg(0) }, '#/trimmed/value'],
    ['neither a delivery nor a lot', {}, '#/receiptId'],
    ['a day that is not on the calendar', { takenAt: '2026-02-30T08:00:00Z' }, '#/takenAt'],
  ])('%s is refused beside its field', async (_case, fields, pointer) => {
    const { lotId } = await kitchen.startLot();
    const reply = await kitchen.operator.put(`/inputs/${v7()}`, {
      lotId,
      weight: kg(1),
      takenAt: kitchen.now(),
      ...(pointer === '#/receiptId' ? {} : { receiptId: v7() }),
      ...fields,
    });
    expect(code(reply)).toEqual([400, 'invalid-input']);
    expect(reply.body.errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer);
  });

  test('a correction needs its reason, gives back what it corrects, and is itself corrected only once', async () => {
    const receiptId = await kitchen.receive('pork', { weight: kg(10) });
    const { lotId } = await kitchen.startLot();
    const first = await kitchen.putIn(lotId, { receiptId, weight: kg(9) });
    const correct = (fields: object) =>
      put({ lotId, receiptId, weight: kg(10), amends: first.inputId, reason: 'Read the wrong line.', ...fields });

    expect(code(await correct({ reason: undefined }))).toEqual([422, 'reason-missing']);
    expect(code(await correct({ amends: v7() }))).toEqual([404, 'not-found']);
    expect(code(await correct({ weight: kg(10.001) }))).toEqual([422, 'more-than-there-is']);
    const second = await done<{ inputId: string; meatBlockGrams: number }>(correct({}));
    expect(second.meatBlockGrams).toBe(10_000);
    expect(code(await correct({}))).toEqual([409, 'already-amended']);

    const { inputs } = await kitchen.showLot(lotId);
    expect(inputs).toMatchObject([
      { inputId: first.inputId, amendedBy: second.inputId },
      { amends: first.inputId, reason: 'Read the wrong line.' },
    ]);
  });

  test('a lot of another shop cannot be found', async () => {
    const other = await anotherShop(larder);
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    const input = { inputId: v7(), lotId, receiptId, weight: kg(1), takenAt: kitchen.now() };
    expect(code(await ask(other.owner, contract.putIn, input))).toEqual([404, 'not-found']);
    expect(code(await ask(other.owner, contract.showLot, { lotId }))).toEqual([404, 'not-found']);
    expect(await done(ask(other.owner, contract.listLots, { standing: 'all' }))).toEqual({ lots: [], more: false });
  });
});

describe('rework', () => {
  const rework = async (sourceLotId: string, weight: object, lotId?: string) =>
    ask(kitchen.operator, contract.putIn, {
      inputId: v7(),
      lotId: lotId ?? (await kitchen.startLot()).lotId,
      sourceLotId,
      weight: weight as { value: number; unit: 'kg' },
      takenAt: kitchen.now(),
    });

  test('takes no more than is left of the earlier lot', async () => {
    const { lotId, code: sourceCode } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await done(rework(lotId, kg(4)));
    expect(said(await rework(lotId, kg(6.5)))).toEqual([
      422,
      'more-than-there-is',
      `6 kg are left of ${sourceCode}, 6.5 kg were asked for.`,
    ]);
  });

  test('never goes back into a lot that is already part of it', async () => {
    const first = await kitchen.startLot();
    await kitchen.putIn(first.lotId);
    expect(said(await rework(first.lotId, kg(1), first.lotId))).toEqual([
      422,
      'into-itself',
      `${first.code} is the lot itself.`,
    ]);
    const second = await kitchen.startLot();
    const third = await kitchen.startLot();
    await done(rework(first.lotId, kg(2), second.lotId));
    await done(rework(second.lotId, kg(1), third.lotId));
    expect(said(await rework(third.lotId, kg(0.5), first.lotId))).toEqual([
      422,
      'into-itself',
      `${third.code} already contains ${first.code}.`,
    ]);
  });

  test('brings its cure along: what is weighed is judged with it', async () => {
    const earlier = await aSausageLot(kitchen, larder, 'cured'); // 156.25 ppm
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await done(rework(earlier.lotId, kg(2), lotId));
    const lot = await kitchen.showLot(lotId);
    expect(lot.targets.find(({ itemName }) => itemName === 'Curing salt 6.25 %')).toMatchObject({
      targetGrams: 25,
      ppm: 25.99,
    }); // 2 kg of 10.025 kg with 1.5625 g of nitrite, on 11.995 kg of meat

    expect(await kitchen.weighCure(lotId)).toMatchObject({
      verdicts: [{ verdict: { kind: 'met', measured: expect.stringContaining('156.25 ppm') } }],
    });
    expect((await kitchen.weighCure(lotId, { weight: g(1) })).deviationId).toBeDefined();
  });

  test('of a lot on hold holds every lot it goes into', async () => {
    const earlier = await aSausageLot(kitchen, larder, 'cured');
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    await done(rework(earlier.lotId, kg(1), lotId));
    expect((await kitchen.showLot(lotId)).standing).toBe('in-work');
    await kitchen.read(earlier.lotId, 'coldRoom', { entered: { value: 55, unit: '°F' } });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      openDeviations: 1,
      because: expect.stringMatching(/^Deviation \d+ is open\. Cold room: 55 °F/),
    });
  });
});

describe('weighing the cure', () => {
  const onTenKilos = async () => {
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId);
    return lotId;
  };

  test('2.5 g of 6.25 % curing salt per kg is the standard dose and passes', async () => {
    const reply = await kitchen.weighCure(await onTenKilos(), { weight: g(25) });
    expect(reply).toMatchObject({
      controlPointId: kitchen.points.cure,
      verdicts: [{ verdict: { kind: 'met', measured: '156.25 ppm' } }],
    });
    expect(reply.deviationId).toBeUndefined();
  });

  test('2.51 g per kg does not, and opens a deviation', async () => {
    const lotId = await onTenKilos();
    const { verdicts, deviationId } = await kitchen.weighCure(lotId, { weight: g(25.1) });
    expect(verdicts).toMatchObject([
      { verdict: { kind: 'missed', measured: '156.88 ppm', margin: '0.63 ppm too much' } },
    ]);
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      deviations: [{ deviationId, open: true }],
    });
  });

  test('portions count together, and one deviation stands for the lot and the limit', async () => {
    const lotId = await onTenKilos();
    expect((await kitchen.weighCure(lotId, { weight: g(15) })).deviationId).toBeUndefined();
    const first = await kitchen.weighCure(lotId, { weight: g(15) });
    const second = await kitchen.weighCure(lotId, { weight: g(1) });
    expect(first.verdicts).toMatchObject([{ verdict: { kind: 'missed', measured: '187.5 ppm' } }]);
    expect(second.deviationId).toBe(first.deviationId);
    expect((await kitchen.showLot(lotId)).deviations).toHaveLength(1);
  });

  test('the content on the label of the delivery counts before that of the item', async () => {
    const receiptId = await kitchen.receive('cure', { weight: kg(1), fractionPercent: 5.88 });
    const reply = await kitchen.weighCure(await onTenKilos(), { receiptId, weight: g(26.5) });
    expect(reply).toMatchObject({ verdicts: [{ verdict: { kind: 'met', measured: '155.82 ppm' } }] });
  });

  test('before there is meat it is undetermined, never met; meat settles it', async () => {
    const { lotId } = await kitchen.startLot();
    expect(await kitchen.weighCure(lotId)).toMatchObject({ verdicts: [{ verdict: { kind: 'undetermined' } }] });
    await kitchen.putIn(lotId);
    expect((await kitchen.showLot(lotId)).controlPoints[0]).toMatchObject({
      stands: 'met',
      judged: [{ verdict: { measured: '156.25 ppm' } }],
    });
  });

  test('more meat brings the concentration back, but what was missed stays open until a person closes it', async () => {
    const lotId = await onTenKilos();
    await kitchen.weighCure(lotId, { weight: g(30) });
    await kitchen.putIn(lotId, { weight: kg(2) });
    const lot = await kitchen.showLot(lotId);
    expect(lot.controlPoints[0]).toMatchObject({
      stands: 'met',
      settled: true,
      judged: [{ verdict: { measured: '156.25 ppm' } }],
    });
    expect(lot).toMatchObject({ standing: 'on-hold', openDeviations: 1 });
  });

  test('a correction to less meat shows the miss, and opens its deviation', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork');
    const { inputId } = await kitchen.putIn(lotId, { receiptId, weight: kg(10) });
    await kitchen.weighCure(lotId);
    const corrected = await kitchen.putIn(lotId, {
      receiptId,
      weight: kg(9),
      amends: inputId,
      reason: 'Tare was left on.',
    });
    expect(corrected.deviationId).toBeDefined();
    expect((await kitchen.showLot(lotId)).controlPoints[0]).toMatchObject({
      stands: 'missed',
      openDeviationId: corrected.deviationId,
      judged: [{ verdict: { measured: '173.61 ppm' } }],
    });
  });

  test('a correction that brings it back under keeps the deviation', async () => {
    const lotId = await onTenKilos();
    const { weighingId, deviationId } = await kitchen.weighCure(lotId, { weight: g(250) });
    const corrected = await kitchen.weighCure(lotId, { weight: g(25), amends: weighingId, reason: 'Point slipped.' });
    expect(corrected).toMatchObject({ verdicts: [{ verdict: { kind: 'met' } }] });
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'on-hold',
      deviations: [{ deviationId, open: true }],
    });
  });

  test('the wrong bag is refused', async () => {
    const lotId = await onTenKilos();
    const weigh = (fields: object) =>
      ask(kitchen.operator, contract.weighIn, {
        weighingId: v7(),
        lotId,
        itemId: kitchen.items.cure,
        weight: g(25),
        takenAt: kitchen.now(),
        ...fields,
      });
    expect(said(await weigh({ receiptId: await kitchen.receive('salt') }))).toEqual([
      422,
      'wrong-item',
      expect.stringMatching(/ is Salt, not Curing salt 6.25 %\.$/),
    ]);
    expect(code(await weigh({ itemId: kitchen.items.pork }))).toEqual([422, 'wrong-item']);
    expect(code(await weigh({ receiptId: await kitchen.receive('cure', { weight: g(20) }) }))).toEqual([
      422,
      'more-than-there-is',
    ]);
    expect(
      code(await weigh({ receiptId: await kitchen.receive('cure', { decision: 'refused', reason: 'Wet.' }) })),
    ).toEqual([422, 'receipt-refused']);
    expect(code(await weigh({ weight: g(0) }))).toEqual([400, 'invalid-input']);
    expect((await kitchen.showLot(lotId)).weighings).toEqual([]);
  });
});

describe('removing weight', () => {
  const remove = (fields: object) =>
    ask(kitchen.operator, contract.recordRemoval, {
      removalId: v7(),
      kind: 'waste',
      weight: kg(1),
      note: '',
      takenAt: kitchen.now(),
      ...fields,
    });

  test('from a lot or from a delivery, never more than is there', async () => {
    const { lotId } = await kitchen.startLot();
    const receiptId = await kitchen.receive('pork', { weight: kg(12) });
    await kitchen.putIn(lotId, { receiptId, weight: kg(10) });
    await done(remove({ lotId, weight: kg(4) }));
    expect(code(await remove({ lotId, weight: kg(6.001) }))).toEqual([422, 'more-than-there-is']);
    expect(code(await remove({ receiptId, weight: kg(2.001) }))).toEqual([422, 'more-than-there-is']);
    await done(remove({ receiptId, weight: kg(2) }));
    await done(remove({ lotId, weight: kg(6) }));
    expect(await kitchen.showLot(lotId)).toMatchObject({
      standing: 'ended',
      removals: [{ weight: { grams: 4000 } }, { weight: { grams: 6000 } }],
    });
  });

  test('names one of the two, and something that is there', async () => {
    expect(code(await remove({}))).toEqual([400, 'invalid-input']);
    expect(code(await remove({ lotId: v7() }))).toEqual([404, 'not-found']);
    expect(code(await remove({ receiptId: v7() }))).toEqual([404, 'not-found']);
  });
});

async function everyPage(standing: contract.Standing | 'all', before?: string): Promise<contract.LotHead[]> {
  const { lots, more } = await done<contract.ReplyOf<typeof contract.listLots>>(
    ask(kitchen.operator, contract.listLots, { standing, before }),
  );
  return more ? [...lots, ...(await everyPage(standing, lots.at(-1)?.startedAt))] : lots;
}

describe('where a lot stands', () => {
  const stands = async (lotId: string) => {
    const { standing, because } = await kitchen.showLot(lotId);
    return [standing, because];
  };

  test('an empty lot waits for its meat, a filled one for its cure', async () => {
    const { lotId } = await kitchen.startLot();
    expect(await stands(lotId)).toEqual(['in-work', 'Next: put in the meat.']);
    await kitchen.putIn(lotId);
    expect(await stands(lotId)).toEqual(['in-work', 'Next: Cure. Cure is looked at.']);
  });

  test('a running chill says its bound and by when it has to be reached', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
    const began = larder.clock.now().getTime();
    await aCurve(kitchen, larder, lotId, 'chill', [140, 120, 100], false);
    const { standing, running, controlPoints } = await kitchen.showLot(lotId);
    expect(standing).toBe('in-work');
    // 130 °F may have been passed as early as the last reading above it, so the 1 h 30 min count from there
    expect(running).toEqual({
      controlPointId: kitchen.points.chill,
      name: 'Chill',
      bound: '80 °F',
      deadline: began + 90 * 60_000,
    });
    expect(controlPoints[2]).toMatchObject({
      stands: 'running',
      bands: [{ label: '130 → 80 °F', startAt: began, kind: 'running' }],
    });
  });

  test('a whole day: labelled, packed, reviewed, shipped', async () => {
    const labelled = await aSausageLot(kitchen, larder, 'labelled');
    expect(await stands(labelled.lotId)).toEqual(['in-work', 'Every control point is met or settled. Next: pack it.']);
    const packed = await aSausageLot(kitchen, larder, 'packed');
    expect(await stands(packed.lotId)).toEqual([
      'to-review',
      'Packed, and every control point is met or settled. Next: the pre-shipment review.',
    ]);
    const { lotId, packingId } = await aSausageLot(kitchen, larder, 'reviewed');
    expect(await stands(lotId)).toEqual(['cleared', 'The pre-shipment review is signed: 10 of 10 packages may ship.']);
    await ship(kitchen, packingId, 4);
    expect(await stands(lotId)).toEqual(['cleared', 'The pre-shipment review is signed: 6 of 10 packages may ship.']);
    await ship(kitchen, packingId, 6);
    expect(await stands(lotId)).toEqual(['shipped', 'All 10 packages have left.']);
  });

  test('a review no longer counts once something that it should have seen is recorded after it', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'reviewed');
    await kitchen.weighCure(lotId, { itemId: kitchen.items.salt, weight: { value: 100, unit: 'g' } });
    const lot = await kitchen.showLot(lotId);
    expect(lot).toMatchObject({ standing: 'to-review', review: { counts: false } });
    expect(lot.because).toContain('Weighing recorded after the review was signed.');
  });

  test('a delivery that was accepted too warm holds every lot it goes into', async () => {
    const itemId = v7();
    await done(
      ask(shop.owner, contract.recordItem, {
        itemId,
        name: 'Pork belly',
        kind: 'meat',
        species: 'pork',
        allergens: [],
        receivingLimit: receivedChilled,
      }),
    );
    const receiptId = await kitchen.receive('pork', {
      itemId,
      temperature: { value: 47, unit: '°F' },
      reason: 'The driver had stood in the sun.',
    });
    const { lotId } = await kitchen.startLot();
    await kitchen.putIn(lotId, { receiptId });
    expect(await stands(lotId)).toEqual([
      'on-hold',
      expect.stringMatching(
        /^Deviation \d+ is open\. Delivery R-\d{4} of Pork belly was accepted\..* Next: record the corrective action/,
      ),
    ]);
  });

  test('the list shows the same, newest first, and can be asked for one standing', async () => {
    const { lotId } = await aSausageLot(kitchen, larder, 'packed');
    const all = await everyPage('all');
    expect(all.find((lot) => lot.lotId === lotId)).toMatchObject({
      standing: 'to-review',
      packages: 10,
      packagesLeft: 10,
      openDeviations: 0,
    });
    expect(all.map((lot) => lot.startedAt)).toEqual(
      all
        .map((lot) => lot.startedAt)
        .sort()
        .reverse(),
    );
    for (const standing of contract.standings) {
      const lots = await everyPage(standing);
      expect(lots).toEqual(all.filter((lot) => lot.standing === standing));
    }
  });

  test('a page begins before the moment it is asked for', async () => {
    const { lots } = await done<contract.ReplyOf<typeof contract.listLots>>(
      ask(kitchen.operator, contract.listLots, { standing: 'all', before: '2026-02-11T00:00:00Z' }),
    );
    expect(lots.map((lot) => lot.code)).toEqual(['26041-2', '26041-1']);
  });
});
