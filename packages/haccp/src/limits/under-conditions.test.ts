import { expect, test } from 'vitest';
import { compose } from '../formula/composition';
import { catalogue } from '../limit-sets/catalogue';
import { cookedMeat65Log } from '../limit-sets/fsis-meat';
import { coolingCured, coolingUncured, coolingUncured2021 } from '../limit-sets/fsis-stabilization';
import { conditionsLeftOut, figureOf, withPublishedConditions } from '../limit-sets/published-conditions';
import { formatMass } from '../quantity/weigh';
import type { Formulation } from './judge-formulation';
import { dependsOnFormulation, type LimitCondition } from './limit-condition';
import { underConditions } from './under-conditions';
import type { Verdict, VerdictKind } from './verdict';

const GRAM = 10n ** 15n;
const nitrite: LimitCondition = { kind: 'nitrite', least: 100_000, per: 'meat block' };
const onBatch: LimitCondition = { kind: 'nitrite', least: 100_000, per: 'batch' };
const accelerator: LimitCondition = { kind: 'accelerator', least: 250_000, per: 'meat block' };
const salt: LimitCondition = { kind: 'salt in water phase', least: 2500, formula: 'salt/(salt+water)' };
const statement: LimitCondition = { kind: 'statement', says: 'Humidity is controlled too.' };

const OF_READINGS = { code: 'of-the-readings' };

const curve = (kind: VerdictKind, fields: Partial<Verdict> = {}): Verdict => ({
  kind,
  finding: `cooling-${kind}`,
  figures: {},
  spare: 3_600_000,
  notes: [OF_READINGS],
  ...fields,
});

/** Ten kilograms of meat, and so many milligrams of pure nitrite and erythorbate. */
const lot = (nitriteMg: bigint, erythorbateMg = 0n): Formulation => ({
  composition: compose({
    freshMeat: [10_000n * GRAM],
    weighed: [
      { mass: (nitriteMg * GRAM) / 1000n, substance: 'sodium nitrite', percent: 100 },
      { mass: (erythorbateMg * GRAM) / 1000n, substance: 'sodium erythorbate', percent: 100 },
    ],
    reworked: [],
  }),
});
const judged = (conditions: LimitCondition[], known: Formulation, kind: VerdictKind = 'met') =>
  underConditions(curve(kind), { ...coolingCured, conditions }, known);

test.each([
  ['exactly 100 ppm of nitrite', [nitrite], lot(1000n), 'met'],
  ['a thousandth of a gram less', [nitrite], lot(999n), 'missed'],
  ['a thousandth of a gram more', [nitrite], lot(1001n), 'met'],
  ['100 ppm on the meat, less on the whole batch', [onBatch], lot(1000n), 'missed'],
  ['nitrite and exactly 250 ppm of erythorbate', [nitrite, accelerator], lot(1000n, 2500n), 'met'],
  ['nitrite and a little less erythorbate', [nitrite, accelerator], lot(1000n, 2499n), 'missed'],
  ['nothing of either weighed', [nitrite, accelerator], lot(0n), 'missed'],
  ['no meat put in', [nitrite], { composition: compose({ freshMeat: [], weighed: [], reworked: [] }) }, 'undetermined'],
  ['nothing known of what went in', [nitrite], {}, 'undetermined'],
  ['salt and water not known', [salt], lot(1000n), 'undetermined'],
  ['water not known', [salt], { salt: 25n }, 'undetermined'],
  ['2.5 % salt in the water phase', [salt], { salt: 25n, water: 975n }, 'met'],
  ['less salt', [salt], { salt: 24n, water: 975n }, 'missed'],
  ['salt below nothing', [salt], { salt: -1n, water: 975n }, 'undetermined'],
  ['salt not known, nitrite missed', [salt, nitrite], lot(999n), 'missed'],
  ['a statement alone', [statement], {}, 'met'],
] as const)('a chill that is met, with %s', (_case, conditions, known, kind) => {
  expect(judged([...conditions], known).kind).toBe(kind);
});

const ppm = (value: string) => ({ value, unit: 'ppm' });
const asked = { code: 'asks-nitrite-on-meat-block', figures: { least: ppm('100') } };

test('what is missed says the figures, that the option may not be used, and keeps the notes', () => {
  expect(judged([nitrite], lot(982n))).toMatchObject({
    kind: 'missed',
    finding: 'formula-not-allowed',
    figures: { asked, there: ppm('98.2'), by: ppm('1.8') },
    notes: [OF_READINGS, { code: 'condition-missed', figures: { asked, read: ppm('98.2'), by: ppm('1.8') } }],
  });
});

test('readings that miss the limit keep their finding and their margin', () => {
  const verdict = underConditions(curve('missed', { spare: -1 }), { ...coolingCured, conditions: [nitrite] }, lot(0n));
  expect(verdict).toMatchObject({
    ...{ kind: 'missed', finding: 'cooling-missed', spare: -1 },
    also: [{ finding: 'formula-not-allowed', figures: { asked, there: ppm('0') } }],
    then: { code: 'judge-by-another-option' },
  });
});

test('doubt about a condition says what to do; readings that are in doubt themselves keep their own finding', () => {
  expect(judged([salt], lot(1000n))).toMatchObject({
    finding: 'formula-not-known',
    figures: {
      asked: { code: 'asks-salt-in-water-phase', figures: { least: { value: '2.5', unit: '%' }, formula: 'salt/(salt+water)' } },
      why: { code: 'salt-in-water-phase-unknown.because' },
      next: { code: 'salt-in-water-phase-unknown.next' },
    },
    notes: [OF_READINGS, { code: 'condition-undetermined' }],
  });
  expect(judged([salt], {}, 'undetermined')).toMatchObject({ finding: 'cooling-undetermined' });
});

test('what would be found but for the formula is kept beneath it', () => {
  const found = { finding: 'cooling-in-time', figures: {}, parts: [] };
  const known = curve('met', found);
  expect(underConditions(known, { ...coolingCured, conditions: [nitrite] }, lot(0n))).toMatchObject({ kind: 'missed', butFor: found });
});

test('a condition that is missed decides while the chill still runs, and the band goes on', () => {
  const running = { code: 'cooling' };
  const verdict = underConditions(curve('undetermined', { running }), { ...coolingCured, conditions: [nitrite] }, lot(0n));
  expect(verdict).toMatchObject({ kind: 'missed', running });
});

test('conditions that are met leave the verdict of the readings as it is', () => {
  expect(judged([nitrite], lot(1200n))).toEqual({
    ...curve('met'),
    notes: [OF_READINGS, { code: 'condition-met', figures: { asked, read: ppm('120'), spare: ppm('20') } }],
  });
  expect(underConditions(curve('met'), { ...coolingCured, conditions: undefined }, {})).toEqual(curve('met'));
});

test('nitrite of rework counts with its share', () => {
  const before = lot(2000n).composition;
  if (!before) throw new Error('That lot is composed');
  const half = compose({ freshMeat: [10_000n * GRAM], weighed: [], reworked: [{ mass: before.all, of: before }] });
  expect(formatMass(half.substances.get('sodium nitrite') ?? 0n, 'g', 2)).toBe('2 g');
  expect(judged([nitrite], { composition: half }).kind).toBe('met');
});

test('a published figure brings its conditions along, whatever longest gap the plan has; one of one’s own brings none', () => {
  const asks = [nitrite, expect.objectContaining({ kind: 'support' })];
  expect(withPublishedConditions(coolingCured)).toEqual({ ...coolingCured, conditions: asks });
  expect(withPublishedConditions({ ...coolingCured, longestGapSeconds: 600 }).conditions).toEqual(asks);
  expect(withPublishedConditions(coolingUncured).conditions).toEqual(asks.slice(1));
  expect(withPublishedConditions(coolingUncured2021)).toBe(coolingUncured2021);
  const own = { ...coolingCured, source: { ...coolingCured.source, citation: 'Own validation' } };
  expect(withPublishedConditions(own)).toBe(own);
  expect(figureOf(withPublishedConditions(coolingCured))).toBe(figureOf(coolingCured));
  const supported = { ...coolingCured, source: { ...coolingCured.source, confirmed: true, support: { own: 'File 12.' } } };
  expect(figureOf(supported)).toBe(figureOf(coolingCured));
});

test('what a limit leaves out of its source’s conditions on the formula is known', () => {
  expect(conditionsLeftOut(coolingCured)).toEqual([nitrite]);
  expect(conditionsLeftOut({ ...coolingCured, conditions: [{ ...nitrite, least: 1000 }] })).toEqual([nitrite]);
  expect(conditionsLeftOut(withPublishedConditions(coolingCured))).toEqual([]);
  expect(conditionsLeftOut(coolingUncured)).toEqual([]);
  expect(conditionsLeftOut(cookedMeat65Log)).toEqual([]);
  const own = { ...coolingCured, source: { ...coolingCured.source, citation: 'our own trial' } };
  expect(conditionsLeftOut(own), 'a figure that no set prints').toEqual([]);
});

test('only limits with conditions on the formula depend on what went in', () => {
  expect(dependsOnFormulation(withPublishedConditions(coolingCured))).toBe(true);
  expect(dependsOnFormulation({ conditions: [statement] })).toBe(false);
  expect(dependsOnFormulation({})).toBe(false);
  expect(dependsOnFormulation(withPublishedConditions(coolingUncured))).toBe(false);
});

test('published limits on offer carry them, and the statements of their source', () => {
  const offered = (key: string) => catalogue.find((entry) => entry.key === key)?.limit.conditions;
  expect(offered('cooling-1999-3')).toMatchObject([nitrite, { kind: 'support' }]);
  expect(offered('australia-new-zealand-2026/cooling-cured')).toEqual([salt, onBatch]);
  expect(offered('cooked-meat-6.5-log')).toMatchObject([{ kind: 'statement' }]);
  expect(offered('cooling-1999-1')).toMatchObject([{ kind: 'support' }]);
  expect(offered('cooling-1999-2')).toMatchObject([{ kind: 'support', says: expect.stringContaining('large-mass') }]);
  expect(offered('cooling-2021-1')).toBeUndefined();
});

test.each<[string, LimitCondition, Formulation, ingredient: bigint, meat: bigint, kind: VerdictKind]>([
  ['nitrite, 1050 mg on 10 kg', nitrite, lot(1050n), 49n, 0n, 'met'],
  ['nitrite, 1050 mg on 10 kg, read to 51 mg', nitrite, lot(1050n), 51n, 0n, 'undetermined'],
  ['nitrite, the meat read to half a kilogram', nitrite, lot(1050n), 0n, 500_000n, 'met'],
  ['nitrite, the meat read to half a kilogram and a gram', nitrite, lot(1050n), 0n, 501_000n, 'undetermined'],
  ['nitrite on the whole batch', onBatch, lot(1060n), 1n, 588_000n, 'met'],
  ['nitrite on the whole batch, read to a gram more', onBatch, lot(1060n), 1n, 600_000n, 'undetermined'],
  ['erythorbate', accelerator, lot(0n, 2600n), 100n, 0n, 'met'],
  ['erythorbate, read to a milligram more', accelerator, lot(0n, 2600n), 101n, 0n, 'undetermined'],
  ['too little as it was weighed', nitrite, lot(999n), 100n, 0n, 'missed'],
  ['exactly as much, where no error is stated', nitrite, lot(1000n), 0n, 0n, 'met'],
])('what the scales may be wrong by, mg: %s', (_case, condition, known, ingredient, meat, kind) => {
  const scales = { ingredient: (ingredient * GRAM) / 1000n, meat: (meat * GRAM) / 1000n };
  const verdict = judged([condition], { ...known, scales });
  expect(verdict.kind).toBe(kind);
  if (kind === 'undetermined') {
    expect(verdict.figures).toMatchObject({ why: { code: 'scales-too-coarse.because', figures: { least: { unit: 'ppm' } } } });
    expect(verdict.notes.at(-1)).toMatchObject({ code: 'condition-undetermined', figures: { read: { unit: 'ppm' } } });
  }
});

test('salt in the water phase is judged by the least salt in the most water', () => {
  const phase = { salt: 26n, water: 974n };
  expect(judged([salt], { ...phase, least: { salt: 25n, water: 975n } }).kind).toBe('met');
  expect(judged([salt], { ...phase, least: { salt: 24n, water: 976n } })).toMatchObject({
    kind: 'undetermined',
    figures: { why: { figures: { least: { value: '2.4', unit: '%' } } } },
  });
  expect(judged([salt], { ...phase, least: { salt: 0n, water: 0n } }).kind).toBe('met');
});
