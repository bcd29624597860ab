import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { aSausageKitchen, type SausageKitchen } from '../builders/a-sausage-kitchen';
import { aCurve, aSausageLot } from '../builders/a-sausage-lot';
import { anotherShop, aShop, done, type Shop, type Worker } from '../builders/a-shop';
import { limitTeller, lines, teller } from '@larderbook/messages';
import { allWords, wordsTogether } from '@larderbook/messages/all';
import { ask } from '../support/ask';
import { startApp, type TestApp } from '../support/start-app';

let larder: TestApp;
let shop: Shop;
let kitchen: SausageKitchen;
let lotId: string;

beforeAll(async () => {
  larder = await startApp(); // 2 March 2026, 2 o'clock in the morning in the shop
  shop = await aShop(larder);
  kitchen = await aSausageKitchen(shop, larder);
  ({ lotId } = await aSausageLot(kitchen, larder, 'labelled'));
});
afterAll(() => larder.close());

type Point = keyof SausageKitchen['points'];
const asked = (ofLot: string, point: Point, by: Worker = kitchen.operator) =>
  ask(by, contract.explainPoint, { lotId: ofLot, controlPointId: kitchen.points[point] });
const explain = (point: Point, ofLot = lotId) => done<contract.PointExplained>(asked(ofLot, point));
const voice = { language: 'en', timeZone: 'UTC', timeStyle: 'US' } as const;
const verdicts = teller({ verdicts: allWords.verdicts.en, limits: allWords.limits.en }, voice);
const line = lines(wordsTogether('workings', 'explanations').en, voice, { ...verdicts, ...limitTeller(allWords.limits.en, voice) });
type Limit = contract.PointExplained['limits'][number];
const tellIn = ({ verdict, limit }: Limit, of = verdict) => verdicts.tell(of, limit);
const working = ({ limits: [limit] }: contract.PointExplained) =>
  (limit?.steps ?? []).map(({ putIn, gives, of }) => {
    const told = tellIn(limit as Limit, of);
    return `${line(putIn, told)} → ${line(gives, told)}`;
  });
const recorded = ({ limits: [limit] }: contract.PointExplained) =>
  (limit?.restsOn ?? []).map(({ is, of }) => line(is, tellIn(limit as Limit, of)));

describe('a verdict is explained', () => {
  test('of weighings with every weighing put in by its name', async () => {
    const explained = await explain('cure');
    expect(working(explained).slice(1, 3)).toEqual(['25 g × 6.25 % → 1.5625 g', '1.5625 g ÷ 10,000 g × 1,000,000 → 156.25 ppm']);
    expect(recorded(explained)).toEqual(['Meat 1, 10,000 g', 'Curing salt 6.25 %, 25 g']);
    expect(explained.limits[0]?.cautions[0]).toEqual({ code: 'caution-curing' });
    expect(explained.series).toBeUndefined();
  });

  test('of a cook with its row, the lethality beside it, and gaps that were found', async () => {
    const { limits, series, lotCode, name, stands } = await explain('cook');
    expect({ name, stands }).toEqual({ name: 'Cook', stands: 'met' });
    expect(lotCode).toMatch(/^26061-/);
    expect(limits[0]?.steps[0]?.gives).toMatchObject({ code: 'row-at-once', figures: { at: { value: '160', unit: '°F' } } });
    expect(series?.lethality).toMatchObject({ judgedBy: 'no holding time needed' });
    expect(series?.lethality?.figures[0]).toMatchObject({
      organism: 'Salmonella',
      referenceCelsius: 60,
      zCelsius: 5.56,
      found: { code: 'killed-more-than' },
    });
    expect(series?.findings.map(({ kind, treatment }) => [kind, treatment])).toEqual(
      Array.from({ length: 3 }, () => ['gap', 'used as it is']),
    );
  });

  test('with what the plan says supports the figure', async () => {
    const { limits } = await explain('chill');
    expect(limits[0]?.sources).toMatchObject([
      { edition: 'January 1999, updated June 1999', support: { own: 'Letter of our process authority, binder 3' } },
    ]);
  });

  test('of a chill on the clock of the shop, with the readings either side of every crossing', async () => {
    const explained = await explain('chill');
    expect(explained.limits[0]?.steps[0]?.putIn).toEqual({ sum: [{ at: expect.any(Number) }, ' − ', { at: expect.any(Number) }] });
    expect(working(explained)[0]).toMatch(/ → 40 min of 1 h 30 min: in time$/);
    const lot = await kitchen.showLot(lotId);
    const ids = lot.controlPoints[2]?.readings.map(({ readingId }) => readingId);
    const [before, after] = explained.limits[0]?.restsOn ?? [];
    expect(before).toMatchObject({ id: ids?.[0], is: { value: '140', unit: '°F' }, role: { code: 'last-at-or-above' } });
    expect(after).toMatchObject({ id: ids?.[1], is: { value: '100', unit: '°F' }, role: { code: 'first-below' } });
    expect(explained.series?.drawing.crossings.map(({ label }) => label.value)).toEqual(['130', '80', '40']);
  });

  test('with growth as a class, its claim, and for a cured product as a worst case only', async () => {
    const { series } = await explain('chill');
    expect(series?.growth).toMatchObject({ as: 'worst case, as if uncured', claim: { code: 'growth-claim' } });
    expect(series?.growth?.estimate?.class).toBe('below 0.5 log');
    expect(series?.growth?.estimate?.name).toContain('pork');
    expect(series?.growth?.estimate?.byStraightLines.withLag).toBeGreaterThan(0);
    expect(series?.growth?.underCure?.because).toEqual({ code: 'no-open-model' });
  });

  test('of a value and of an answer with what was read and seen', async () => {
    expect(working(await explain('coldRoom'))).toEqual(['41 °F − 36 °F → 5 °F. 36 °F is within the limit.']);
    expect(working(await explain('label'))).toEqual(['yes: Label 12 on the roll. → A person saw that the statement holds.']);
  });

  test('by what counts: a corrected reading is explained by its correction', async () => {
    const { lotId: other } = await aSausageLot(kitchen, larder, 'cured');
    const { readingId } = await kitchen.read(other, 'coldRoom', { entered: { value: 63, unit: '°F' } });
    const correction = { amends: readingId, reason: 'Misread.' };
    await kitchen.read(other, 'coldRoom', { entered: { value: 36, unit: '°F' }, ...correction });
    expect(recorded(await explain('coldRoom', other))).toEqual(['36 °F']);
  });

  test('while a stage runs with the time left and what would still rescue it', async () => {
    const { lotId: running } = await aSausageLot(kitchen, larder, 'cooked');
    await aCurve(kitchen, larder, running, 'chill', [140, 100, 78, 70], false);
    const { stands, limits, series } = await explain('chill', running);
    expect(stands).toBe('running');
    expect(limits[0]?.steps.find(({ what }) => line(what).endsWith('time left'))?.gives).toMatchObject({ code: 'time-left' });
    expect(limits[0]?.rescue).toMatchObject([{ code: 'rescue', figures: { stage: { to: { value: '40', unit: '°F' } } } }]);
    expect(series?.forecast?.use).toBe('advice, never acceptance');
  });

  test('that is not there yet only by what will be asked', async () => {
    const { lotId: fresh } = await kitchen.startLot();
    const { stands, limits, asked: limitsAsked, series } = await explain('chill', fresh);
    expect({ stands, limits }).toEqual({ stands: 'not-started', limits: [] });
    expect(limitsAsked[0]?.said).toBe('130 → 80 °F within 1 h 30 min, then 80 → 40 °F within 5 h');
    expect(series).toBeUndefined();
  });
});

describe('who may read it', () => {
  test('an inspector may', async () => {
    expect((await asked(lotId, 'chill', await shop.hire('inspector'))).status).toBe(200);
  });

  test('another shop and whoever asks for what is not there may not', async () => {
    const other = await anotherShop(larder);
    expect((await asked(lotId, 'chill', other.owner)).body).toMatchObject({ status: 404, code: 'not-found' });
    const at = (ofLot: string, controlPointId: string) => ask(kitchen.operator, contract.explainPoint, { lotId: ofLot, controlPointId });
    expect((await at(v7(), kitchen.points.chill)).body).toMatchObject({
      code: 'not-found',
      detail: 'There is no such lot in this shop.',
    });
    expect((await at(lotId, v7())).body).toMatchObject({
      code: 'not-found',
      detail: 'The plan of this lot has no such control point.',
    });
  });
});
