import * as contract from '@larderbook/contracts';
import type { InputOf } from '@larderbook/contracts';
import { receivedChilled } from '@larderbook/haccp';
import { v7 } from 'uuid';
import type { TestApp } from '../support/start-app';
import { anEstablishment, anOwner, done, password, type Shop } from './a-shop';
import { aSausageKitchen } from './a-sausage-kitchen';
import { aSausageLot } from './a-sausage-lot';
import { settle } from './a-settlement';
import { aSausagePlan } from './a-sausage-plan';
import { aDwellRow, ownLimits } from './own-limits';
import { supplierFields } from './a-supplier';
import { itemFields } from './an-item';
import { productFields } from './a-product';
import { ask } from '../support/ask';
import type { RouteName } from '../support/routes';

type Contracts = typeof contract;
type Inputs = { [N in RouteName]: InputOf<Contracts[N]> };

/** What there is in a shop to ask about, and to go on with. */
export type Stock = Awaited<ReturnType<typeof aStockedShop>>;

/** A shop in which every route has something to do: lots at several stages, deviations, a plan that is not adopted. */
export async function aStockedShop(shop: Shop, larder: TestApp) {
  const kitchen = await aSausageKitchen(shop, larder);
  const { operator, reviewer, productId, points, items, now } = kitchen;
  const open = await aSausageLot(kitchen, larder, 'cured');
  const { readingId } = await kitchen.read(open.lotId, 'chill', { entered: { value: 120, unit: '°F' } });
  const packed = await aSausageLot(kitchen, larder, 'packed');
  const cleared = await aSausageLot(kitchen, larder, 'reviewed');
  const [receiptId, receiptToCorrect, receiptToVoid] = [
    await kitchen.receive('pork'),
    await kitchen.receive('pork'),
    await kitchen.receive('pork'),
  ];
  const { supplier } = await done<contract.Receipt>(ask(operator, contract.showReceipt, { receiptId }));

  const { lotId: held } = await aSausageLot(kitchen, larder, 'cured');
  const deviations = [v7(), v7(), v7(), v7()] as const;
  for (const deviationId of deviations) {
    const seen = { lotId: held, description: 'Water on the floor.', takenAt: now() };
    await done(ask(operator, contract.openDeviation, { deviationId, ...seen }));
  }
  const [fresh, acted, settled, decided] = deviations;
  const action = {
    form: 'unforeseen',
    segregation: 'Tagged.',
    acceptability: 'Looked at.',
    product: 'None reached it.',
    reassessment: 'Not likely again.',
    reassessedBy: 'Odile Marsh',
  } as const;
  for (const deviationId of [acted, settled]) {
    await done(ask(operator, contract.recordCorrectiveAction, { actionId: v7(), deviationId, action, takenAt: now() }));
  }
  const dry = { decision: 'release', reason: 'Dry.', basis: 'test result' } as const;
  type Made = Pick<InputOf<Contracts['recordDisposition']>, 'decision' | 'reason' | 'basis'>;
  const decideOn = (deviationId: string, made: Made, value: number) => {
    const dispositionId = v7();
    const decision = { dispositionId, deviationIds: [deviationId], lotId: held, weight: { value, unit: 'kg' as const }, ...made };
    return done(ask(reviewer, contract.recordDisposition, decision)).then(() => dispositionId);
  };
  const condemned = await decideOn(settled, { decision: 'condemn', reason: 'Wet.' }, 1);
  await decideOn(settled, dry, 9.025);
  const toCorrect = await decideOn(decided, dry, 1);

  const { lotId: once } = await aSausageLot(kitchen, larder, 'reviewed');
  const { review } = await kitchen.showLot(once);
  const toReopen = v7();
  const { lotId: closedOn } = await aSausageLot(kitchen, larder, 'cured');
  await done(
    ask(operator, contract.openDeviation, { deviationId: toReopen, lotId: closedOn, description: 'Water on the floor.', takenAt: now() }),
  );
  const { closing } = await settle(reviewer, toReopen, now());

  const [planId, formulaId, instrumentId, customerId] = [v7(), v7(), v7(), v7()];
  await done(ask(shop.owner, contract.recordPlan, { planId, productId, content: aSausagePlan().content }));
  const lines = [{ part: 'meat', itemId: items.pork, percent: 100 }] as const;
  await done(ask(shop.owner, contract.recordFormula, { formulaId, productId, expectedYieldPercent: 90, lines: [...lines] }));
  const scale = { name: 'Bench scale', kind: 'scale', unit: 'g', tolerance: 1, checkEveryDays: 30 } as const;
  await done(ask(operator, contract.recordInstrument, { instrumentId, ...scale }));
  await done(ask(operator, contract.recordCustomer, { customerId, name: 'Fenwick Deli', address: '', contact: '' }));
  const { personId } = await shop.hire('operator');
  const ownSetId = v7();
  await done(ask(shop.owner, contract.recordOwnLimits, { ownSetId, ...ownLimits({ edition: '2026-1' }) }));
  return {
    ...{
      kitchen,
      productId,
      points,
      items,
      receiptId,
      receiptToCorrect,
      receiptToVoid,
      decided,
      toCorrect,
      supplierId: supplier.supplierId,
      planId,
      formulaId,
    },
    ...{
      instrumentId,
      customerId,
      personId,
      ownSetId,
      readingId,
      fresh,
      acted,
      settled,
      held,
      closingId: closing?.closingId ?? '',
      reviewId: review?.reviewId ?? '',
      condemned,
      dry,
      open,
      packed,
      cleared,
      action,
      scale,
    },
  };
}

/** A request for every route that the owner of a stocked shop may send and that is done. New records get a new id. */
export function everyRequest(stock: Stock): Inputs {
  const { items, productId, receiptId, points } = stock;
  const { lotId } = stock.open;
  const takenAt = stock.kitchen.now();
  const weight = { value: 10, unit: 'g' } as const;
  const limit = 'cooked-meat-6.5-log';
  const line = { part: 'meat', itemId: items.pork, percent: 100 } as const;
  const aCook = [130, 145, 150].map((value, index) => ({ minutes: index * 10, value }));
  const { content } = aSausagePlan();
  const delivery = { itemId: items.pork, supplierId: stock.supplierId, supplierLot: 'HH-1', reason: '', takenAt };
  return {
    firstRun: {},
    setUpShop: { establishmentId: v7(), owner: anOwner({ userName: 'second' }), establishment: anEstablishment() },
    openDemonstration: {},
    demonstrationProgress: {},
    signIn: { userName: 'odile', password },
    whoIsSignedIn: {},
    signOut: {},
    chooseLanguage: { language: 'en' },
    changePassword: { current: password, next: password },
    listPeople: {},
    addPerson: {
      ...{ personId: v7(), name: 'Ines Holt', userName: `ines-${v7().slice(-12)}`, password },
      roles: ['operator'],
    },
    grantRoles: { grantId: v7(), personId: stock.personId, roles: ['operator', 'reviewer'] },
    resetPassword: { personId: stock.personId, password },
    changeEstablishment: {
      detailsId: v7(),
      ...anEstablishment({ jurisdiction: 'Canada', place: 'Québec', limitSet: 'canada-2026' }),
    },
    listSuppliers: {},
    recordSupplier: { supplierId: v7(), ...supplierFields(), amends: stock.supplierId },
    listItems: {},
    recordItem: { itemId: v7(), ...itemFields(), receivingLimit: receivedChilled, amends: items.pork },
    listReceipts: { left: 'any', itemId: items.pork, before: '2026-04-01T08:00:00Z' },
    showReceipt: { receiptId },
    recordReceipt: {
      ...{ receiptId: v7(), ...delivery, weight, decision: 'accepted', temperature: { value: 36, unit: '°F' } },
      ...{ supplierEstablishmentNumber: '01177-X', killDate: '2026-02-27', packDate: '2026-02-28', sure: true },
    },
    correctReceipt: {
      ...{ correctionId: v7(), amends: stock.receiptToCorrect, reason: 'Typed wrongly.' },
      receipt: { ...delivery, weight, decision: 'accepted', temperature: { value: 36, unit: '°F' }, sure: true },
    },
    voidRecord: { voidId: v7(), what: 'receipt', amends: stock.receiptToVoid, reason: 'Typed twice.' },
    listProducts: {},
    showProduct: { productId },
    showProductLimits: { productId },
    recordProduct: { productId: v7(), ...productFields(), amends: productId },
    recordFormula: { formulaId: v7(), productId, expectedYieldPercent: 90, lines: [line] },
    planBatch: { formulaId: stock.formulaId, trimmedMeat: weight },
    showPlan: { planId: stock.planId },
    recordPlan: { planId: v7(), productId, content },
    adoptPlan: { adoptionId: v7(), planId: stock.planId, statement: 'Adopted.' },
    listStarterPlans: {},
    listPublishedLimits: {},
    listControlPoints: {},
    listLots: { standing: 'all', before: '2026-04-01T08:00:00Z' },
    showLot: { lotId },
    explainPoint: { lotId, controlPointId: points.cook },
    startLot: { lotId: v7(), productId, code: `L-${v7().slice(-12)}`, note: '', takenAt },
    putIn: { inputId: v7(), lotId, receiptId, weight, trimmed: weight, takenAt },
    weighIn: { weighingId: v7(), lotId, itemId: items.salt, weight, instrumentId: stock.instrumentId, takenAt },
    recordRemoval: { removalId: v7(), lotId, kind: 'sample', weight, note: '', takenAt },
    recordReading: {
      ...{ readingId: v7(), lotId, controlPointId: points.coldRoom, entered: { value: 38, unit: '°F' }, takenAt },
      ...{ probe: '', sure: true, instrumentId: stock.instrumentId },
    },
    clarifyReadings: {
      ...{ clarificationId: v7(), lotId, controlPointId: points.chill, readingIds: [stock.readingId], takenAt },
      ...{ word: 'not of the core', reason: 'The probe lay on the table.' },
    },
    endStage: { stageEndId: v7(), lotId, controlPointId: points.cook, takenAt },
    listInstruments: {},
    recordInstrument: { instrumentId: v7(), ...stock.scale },
    recordCalibration: {
      ...{ calibrationId: v7(), instrumentId: stock.instrumentId, method: 'test weight', action: '', takenAt },
      ...{ expected: 500, observed: 500 },
    },
    listDeviations: { open: 'all', lotId },
    showDeviation: { deviationId: stock.fresh },
    openDeviation: { deviationId: v7(), lotId, controlPointId: points.label, description: 'Blurred.', takenAt },
    recordCorrectiveAction: { actionId: v7(), deviationId: stock.fresh, action: stock.action, takenAt },
    recordDisposition: { dispositionId: v7(), deviationIds: [stock.acted], lotId: stock.held, weight, ...stock.dry },
    recordDestruction: { destructionId: v7(), dispositionId: stock.condemned, method: 'Burnt.', takenAt },
    correctDisposition: {
      ...{ correctionId: v7(), amends: stock.toCorrect, reason: 'Weighed again.' },
      disposition: { deviationIds: [stock.decided], lotId: stock.held, weight, ...stock.dry },
    },
    closeDeviation: { closingId: v7(), deviationId: stock.settled, note: '' },
    takeBackClosing: { takingBackId: v7(), closingId: stock.closingId, reason: 'Too early.' },
    showReview: { lotId },
    signReview: { reviewId: v7(), lotId: stock.packed.lotId, statement: 'Complete.' },
    takeBackReview: { takingBackId: v7(), reviewId: stock.reviewId, reason: 'The wrong lot.' },
    listCustomers: {},
    recordCustomer: { customerId: v7(), name: 'Fenwick Deli', address: '', contact: '', amends: stock.customerId },
    packLot: { packingId: v7(), lotId, count: 1, net: weight, useBy: '2026-03-20', takenAt },
    listPackings: { left: 'any' },
    listShipments: { before: '2026-04-01T08:00:00Z' },
    recordShipment: {
      ...{ shipmentId: v7(), customerId: stock.customerId, document: '', takenAt },
      lines: [{ packingId: stock.cleared.packingId, count: 1 }],
    },
    findTrace: { words: 'pork' },
    showTrace: { nodeId: receiptId },
    traceSupplierLot: { supplierLot: 'ml-88', supplierId: stock.supplierId },
    printSupplierLot: { supplierLot: 'ml-88', supplierId: stock.supplierId },
    printLotRecord: { lotId },
    printPlan: { planId: stock.planId },
    printMonitoringLog: { controlPointId: points.cook, from: '2026-03-01', to: '2026-03-31' },
    printDeviationReport: { deviationId: stock.fresh },
    ledgerHead: {},
    verifyLedger: {},
    exportLedger: {},
    showToday: {},
    calculateCure: { meat: weight, strength: 6.25, limit: 'nitrite-comminuted', scale: weight },
    calculateHold: { value: 150, unit: '°F', limit },
    calculateCurve: { unit: '°F', limit, readings: [{ minutes: 0, value: 150 }] },
    calculateInstrument: { figure: 160, error: 1, unit: '°F', side: 'min' },
    calculateBoiling: { metres: 1500, unit: '°C' },
    calculateLethality: { unit: '°F', limit, readings: aCook },
    calculateGrowth: { unit: '°F', species: 'pork', cured: 'no', readings: aCook },
    calculateArrival: { unit: '°F', way: 'heating', target: 160, medium: 175, readings: aCook },
    calculateIngoing: { method: 'chopped', salt: weight, strength: 6.25, weight: { value: 4, unit: 'kg' } },
    calculateComposition: { moisture: 55, protein: 14, fat: 25, salt: 2 },
    calculateListeria: { waterPhaseSalt: 3.5, pH: 6.1, celsius: 5, hours: 240 },
    calculateFermentation: {
      unit: '°F',
      readings: [
        { minutes: 0, value: 75, pH: 5.8 },
        { minutes: 900, value: 76, pH: 5.2 },
      ],
    },
    calculateDrying: {
      unit: 'g',
      percent: 30,
      weighings: [
        { days: 0, weight: 500 },
        { days: 3, weight: 440 },
      ],
    },
    calculateFreezing: { what: 'centre', thicknessUnit: 'in', unit: '°F', readings: [{ minutes: 0, value: -5 }] },
    calculateHumidity: { option: '1', cooking: 180, humid: 95, endpoint: 150, unit: '°F' },
    calculateEquivalentHold: { product: 'burgers', value: 65, unit: '°C' },
    calculatePickle: { substance: 'sodium nitrite', pickle: { value: 20, unit: 'kg' }, pump: 10, ppm: 150, strength: 6.25 },
    calculateBrine: { salt: { value: 1, unit: 'kg' }, water: { value: 9, unit: 'kg' } },
    calculatePump: { green: { value: 10, unit: 'kg' }, pumped: { value: 11, unit: 'kg' } },
    calculatePhosphate: { pickle: 4, pump: 10 },
    calculateBinders: { product: 'sausage', finished: { value: 10, unit: 'kg' }, usual: weight },
    calculateCitric: { accelerator: weight, citric: weight },
    calculateNaturalNitrite: {
      natural: weight,
      ingredientLot: 'C-17',
      certificateLot: 'C-17',
      percent: 2,
      as: 'NaNO₂',
      meat: { value: 10, unit: 'kg' },
      limit: 'nitrite-comminuted',
    },
    calculateWaterInFormula: { product: 'fresh pork sausage', others: { value: 10, unit: 'kg' } },
    calculateWaterInProduct: { product: 'dry sausage', moisture: 36, protein: 20 },
    calculatePercent: { base: { value: 10, unit: 'kg' }, percent: 1.8 },
    calculateBatch: {
      from: 'trimmed meat',
      lines: [{ name: 'Salt', percent: 1.8 }],
      trimmedMeat: { value: 10, unit: 'kg' },
      yieldOn: 'everything',
    },
    listLimitSets: {},
    showLimitSet: { set: 'us-retail-2022' },
    compareLimitSets: { here: 'us-retail-2022', there: 'us-retail-2017' },
    recordOwnLimits: {
      ownSetId: v7(),
      ...ownLimits({ edition: '2026-2', replaces: stock.ownSetId, rows: [aDwellRow({ note: 'Our own oven.' })] }),
    },
    rowsToTake: { set: 'us-retail-2022' },
  };
}
