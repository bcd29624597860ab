import * as contract from '@larderbook/contracts';
import { cookedMeat65Log } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { ask, code } from '../support/ask';
import { aDevice, type Device } from '../support/device';
import { printed } from '../support/printed';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let inspector: Worker;
beforeAll(async () => {
  larder = await startApp(new Date('2026-03-02T14:00:00Z')); // eight in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  inspector = await shop.hire('inspector');
});
afterAll(() => larder.close());

/** An inspector who reads Spanish. */
async function inSpanish(): Promise<Worker> {
  const hired = await shop.hire('inspector');
  await done(ask(hired, contract.chooseLanguage, { language: 'es' }));
  return hired;
}

const print = (path: string) => printed(inspector, path);
const refused = async (path: string, by: Device = inspector) => code(await by.get(path));
const head = async () => (await done<{ head: { seq: number; hash: string } }>(ask(inspector, contract.ledgerHead, {}))).head;

describe('the plan', () => {
  const planOf = (planId: string) => `/plans/${planId}/paper`;

  test('holds the product, its hazards, control points with limits and sources, and who adopted it', async () => {
    const { text, title, name } = await print(planOf(kitchen.planId));
    expect(name).toBe('inline; filename="Smoked-sausage-plan-1.pdf"');
    expect(title).toBe('HACCP plan: Smoked sausage, version 1');
    for (const said of [
      'In force',
      'Pork shoulder 100 %, Salt 1.6 %, Curing salt 6.25 % 0.25 %',
      '21 days after packing',
      'Flow diagram',
      'Hazard analysis',
      'CCP 1',
      '9 CFR 424.21(c)',
      'Support on file: Letter of our process authority, binder 3',
      'If it is missed Hold the lot and call the owner.',
      'Adopted Adopted.',
      'Odile Farrow',
      'No earlier version was adopted.',
      `Ledger head ${(await head()).seq}`,
    ])
      expect(text).toContain(said);
  });

  test('is printed in the language that is asked for, and else in that of whoever prints it', async () => {
    const asked = await print(`${planOf(kitchen.planId)}?language=es`);
    expect([asked.title, asked.language]).toEqual(['Plan HACCP: Smoked sausage, versión 1', 'es']);
    for (const said of ['Vigente', 'Diagrama de flujo', 'Análisis de peligros', 'PCC 1', 'Si no se cumple Hold the lot'])
      expect(asked.text).toContain(said);
    const hired = await inSpanish();
    expect((await printed(hired, planOf(kitchen.planId))).language).toBe('es');
    expect((await printed(hired, `${planOf(kitchen.planId)}?language=en`)).language).toBe('en');
    expect(await refused(`${planOf(kitchen.planId)}?language=xx`)).toEqual([400, 'invalid-input']);
  });

  test('of a plan that was begun in Spanish says nothing in English but where its figures come from', async () => {
    const { starters } = await done<contract.ReplyOf<typeof contract.listStarterPlans>>((await inSpanish()).get('/starter-plans'));
    const content = starters.find(({ process }) => process === 'cook-chill')?.content;
    if (!content) throw new Error('There is a plan to start from for a dish');
    const planId = v7();
    await done(ask(shop.owner, contract.recordPlan, { planId, productId: kitchen.productId, content }));
    const { text } = await print(`${planOf(planId)}?language=es`);
    for (const said of [
      'Recepción de la carne',
      '135 → 70 °F en 2 h como máximo, y 135 → 41 °F en 6 h en total como máximo',
      '165 °F, sin tiempo de mantenimiento',
      'El reloj empieza Desde el final de Cocción.',
      'Por lo menos cada 30 min',
      'plancha, 2 in en lo más delgado',
      'Proceso Cocido y enfriado',
      'Cerdo',
    ])
      expect(text).toContain(said);
    const cited = content.controlPoints.flatMap(({ limits }) =>
      limits.flatMap(({ limit: { source } }) => [source.citation, source.edition]),
    );
    const own = [...cited, 'Smoked sausage', 'The inspector'].reduce((rest, each) => rest.replaceAll(each, ' '), text);
    expect(own.match(/\b(the|and|with|from|which|every|before|within|is|are|of|for|not|at least|none)\b/gi) ?? []).toEqual([]);
  });

  test('says of what is stirred that its speed is not judged, and of a piece that it is', async () => {
    const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    const pieces: contract.ControlPoint['piece'][] = [{ shape: 'stirred' }, { shape: 'cylinder', smallest: { value: 22, unit: 'mm' } }];
    const series = content.controlPoints.filter(({ takenAs }) => takenAs === 'curve');
    const controlPoints = content.controlPoints.map((point) => ({ ...point, piece: pieces[series.indexOf(point)] }));
    const { productId } = kitchen;
    const planId = v7();
    await done(ask(shop.owner, contract.recordPlan, { planId, productId, content: { ...content, controlPoints } }));
    const { text } = await print(planOf(planId));
    expect(text).toContain('stirred or pumped: no core. No reading is doubted for how fast it moves.');
    expect(text).toContain('cylinder, 22 mm at its thinnest. A core that moves faster is doubted.');
  });

  test('says what starts each clock, the piece, the errors allowed for, how often at least, and what supports a figure', async () => {
    const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    const [model] = content.controlPoints as [contract.ControlPoint];
    const [chamberId, beginsId] = [v7(), v7()];
    const plain = { ...model, kind: 'prerequisite' as const, probes: [], plausible: undefined, follows: undefined, frequency: undefined };
    const { source } = cookedMeat65Log;
    const begins: contract.ControlPoint = {
      ...plain,
      controlPointId: beginsId,
      name: 'Fermentation begins',
      takenAs: 'attestation',
      limits: [{ limitId: v7(), limit: { kind: 'attestation', statement: 'The chamber is full.', asks: 'moment', source } }],
    };
    const chamber: contract.ControlPoint = {
      ...plain,
      controlPointId: chamberId,
      name: 'Fermentation',
      takenAs: 'curve',
      follows: beginsId,
      limits: [{ limitId: v7(), limit: { ...cookedMeat65Log, longestGapSeconds: 3600 } }],
      ...{ piece: { shape: 'cylinder', smallest: { value: 60, unit: 'mm' } }, errors: { temperature: { hundredths: 200, unit: '°F' } } },
      frequency: { everyMinutes: 30 },
    };
    const planId = v7();
    await done(
      ask(shop.owner, contract.recordPlan, {
        planId,
        productId: kitchen.productId,
        content: { ...content, controlPoints: [...content.controlPoints, begins, chamber] },
      }),
    );
    const { text } = await print(planOf(planId));
    for (const said of [
      'Clock starts At the end of Cook.',
      'Clock starts When it is recorded at Fermentation begins.',
      'Recorded The moment: it starts the clock of Fermentation.',
      'Piece cylinder, 60 mm at its thinnest',
      'Allowed for ± 2 °F of the thermometer.',
      'Fewest readings At least every 30 min.',
      'Support on file: Letter of our process authority, binder 3',
    ])
      expect(text).toContain(said);
  });

  test('names the version it took the place of, and says of that one that it is superseded', async () => {
    const next = { planId: v7(), productId: kitchen.productId };
    const { content } = await done<contract.Plan>(ask(shop.owner, contract.showPlan, { planId: kitchen.planId }));
    await done(ask(shop.owner, contract.recordPlan, { ...next, content }));
    const draft = await print(planOf(next.planId));
    expect(draft.text).toContain('Not adopted. This version is signed by nobody');
    expect(draft.text).toContain('Draft');

    larder.clock.moveOn(60_000);
    const signed = { adoptionId: v7(), planId: next.planId, statement: 'Read against our process.' };
    await done(ask(shop.owner, contract.adoptPlan, signed));
    expect((await print(planOf(next.planId))).text).toContain('Supersedes Version 1, adopted by Odile Farrow');
    expect((await print(planOf(kitchen.planId))).text).toContain('Superseded');
  });

  test('is for everybody of the shop, for nobody else', async () => {
    const other = (await anotherShop(larder)).owner;
    expect(await refused(planOf(kitchen.planId), other)).toEqual([404, 'not-found']);
    expect(await refused(planOf(kitchen.planId), aDevice(larder.app))).toEqual([401, 'not-signed-in']);
    expect(await refused(planOf(v7()))).toEqual([404, 'not-found']);
  });
});
