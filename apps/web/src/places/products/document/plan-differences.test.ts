import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { coolingFoodCode, nitriteComminuted } from '@larderbook/haccp';
import { expect, test } from 'vitest';
import { aPlan, aPoint, stepIds } from '../test-plans/a-plan';
import { limits } from '../../../ui/tell-here.test-data';
import { inEnglish } from '../../../ui/in-english.test-data';
import { planDifferences as differencesIn } from './plan-differences';

const speakers = { say: inEnglish('plan-versions'), sayPlans: inEnglish('plans'), sayProducts: inEnglish('products'), limits };
const planDifferences = (before: PlanContent, after: PlanContent) => differencesIn(before, after, speakers);

const was = aPlan();
const [trimming, cooking, chilling] = was.steps;
const [cook, chill] = was.controlPoints;
if (!trimming || !cooking || !chilling || !cook || !chill) throw new Error('The plan of these tests is cut short');

test('a version equal to the one before differs in nothing', () => {
  expect(planDifferences(was, aPlan())).toEqual([]);
});

test('the head of the plan says what it was and what it is', () => {
  expect(planDifferences(was, aPlan({ title: 'Roast beef', notes: 'Reassessed in March.' }))).toEqual([
    { where: 'The plan', what: 'Title', before: 'Roast', after: 'Roast beef' },
    { where: 'The plan', what: 'Notes', before: 'nothing', after: 'Reassessed in March.' },
  ]);
});

test('a step that is new, one that went, and one that has another name', () => {
  const resting = { stepId: '01990000-0000-7000-8000-000000000004', name: 'Resting', hazards: [] };
  expect(planDifferences(was, aPlan({ steps: [{ ...cooking, name: 'Roasting' }, resting, chilling] }))).toEqual([
    { where: 'Trimming', what: 'This step was removed.' },
    { where: 'Roasting', what: 'Name of the step', before: 'Cooking', after: 'Roasting' },
    { where: 'Resting', what: 'This step is new.' },
  ]);
});

test('steps in another order', () => {
  expect(planDifferences(was, aPlan({ steps: [cooking, trimming, chilling] }))).toEqual([
    {
      where: 'The plan',
      what: 'Order of the steps',
      before: 'Trimming, Cooking, Chilling',
      after: 'Cooking, Trimming, Chilling',
    },
  ]);
});

test('a hazard is known by its words; what is thought about it may change', () => {
  const bone = { kind: 'physical' as const, what: 'Bone splinters', likely: false, because: '', control: '' };
  const [survival] = cooking.hazards;
  if (!survival) throw new Error('Cooking has a hazard');
  const steps = [{ ...trimming, hazards: [bone] }, { ...cooking, hazards: [{ ...survival, likely: false }] }, chilling];
  expect(planDifferences(was, aPlan({ steps }))).toEqual([
    { where: 'Trimming', what: 'Hazard added: Bone splinters, not likely.' },
    { where: 'Cooking', what: 'Survival of Salmonella: likely to occur', before: 'Likely', after: 'Not likely' },
  ]);
});

test('fewer readings than were asked for before do not go unseen', () => {
  const before = aPlan({ controlPoints: [{ ...cook, frequency: { everyMinutes: 30 } }, chill] });
  const after = aPlan({ controlPoints: [{ ...cook, frequency: { timesInALot: 1 } }, chill] });
  expect(planDifferences(before, after)).toEqual([
    { where: cook.name, what: 'Fewest readings', before: 'at least every 30 min', after: 'at least once in a lot' },
  ]);
  expect(planDifferences(before, was)).toMatchObject([{ what: 'Fewest readings', after: 'nothing' }]);
});

test('another limit shows its figures and its source', () => {
  const slower = { ...chill, limits: [{ limitId: 'another', limit: coolingFoodCode }] };
  const differences = planDifferences(was, aPlan({ controlPoints: [cook, slower] }));
  expect(differences.map(({ what }) => what)).toEqual(['Limits', 'Source of the limits']);
  expect(differences[0]?.after).toBe('135 → 70 °F within 2 h, and 135 → 41 °F within 6 h in all');
});

test('a condition that came or went does not go unseen', () => {
  const conditions = [{ kind: 'nitrite' as const, least: 100_000, per: 'meat block' as const }];
  const asking = { ...chill, limits: chill.limits.map((entry) => ({ ...entry, limit: { ...entry.limit, conditions } })) };
  expect(planDifferences(was, aPlan({ controlPoints: [cook, asking] }))).toMatchObject([
    { where: chill.name, what: 'What the limits ask for', after: expect.stringContaining('at least 100 ppm') },
  ]);
});

test('one row changed in the middle of a table does not go unseen', () => {
  const [first] = cook.limits;
  if (first?.limit.kind !== 'dwell') throw new Error('Cooking is a table of holding times');
  const rows = first.limit.rows.map((row, i) => (i === 5 ? { ...row, seconds: row.seconds + 60 } : row));
  const limits = [{ ...first, limit: { ...first.limit, rows } }];
  const stricter = aPlan({ controlPoints: [{ ...cook, limits }, chill] });
  expect(planDifferences(was, stricter)).toMatchObject([{ where: 'Cooking', what: 'Limits' }]);
});

test('a figure that changed in °C alone, and one behind the same printed words', () => {
  const stages = coolingFoodCode.stages.map((stage) => ({ ...stage, to: { ...stage.to, '°C': 400 } }));
  const cooler = { ...coolingFoodCode, stages };
  const own = (max: number): ControlPoint['limits'] => [{ limitId: 'own', limit: { ...nitriteComminuted, max } }];
  const between = (before: ControlPoint['limits'], after: ControlPoint['limits']) =>
    planDifferences(aPlan({ controlPoints: [{ ...cook, limits: before }] }), aPlan({ controlPoints: [{ ...cook, limits: after }] }));
  const [inCelsius] = between([{ limitId: 'c', limit: coolingFoodCode }], [{ limitId: 'c', limit: cooler }]);
  expect(inCelsius?.after).toBe('57 → 4 °C within 2 h, and 57 → 4 °C within 6 h in all');
  expect(between(own(15_625), own(15_000))[0]?.after).toBe('≤ ¼ oz per 100 lb (156 ppm), exactly 150 ppm');
});

test('a control point that went takes the clock of its chill with it', () => {
  expect(planDifferences(was, aPlan({ controlPoints: [{ ...chill, follows: undefined }] }))).toEqual([
    { where: 'Cooking', what: 'This control point was removed.' },
    { where: 'Chilling', what: 'Clock starts with', before: 'Cooking', after: 'nothing' },
  ]);
});

test('a new control point is said with its limit', () => {
  const source = { citation: 'Own rule', edition: '1', confirmed: true };
  const limit = { kind: 'attestation' as const, statement: 'The label is right', source };
  const limits = [{ limitId: 'x', limit }];
  const label = aPoint({ controlPointId: 'label', stepId: stepIds.chilling, name: 'Label', limits });
  expect(planDifferences(was, aPlan({ controlPoints: [...was.controlPoints, label] }))).toEqual([
    { where: 'Label', what: 'This control point is new: The label is right.' },
  ]);
});
