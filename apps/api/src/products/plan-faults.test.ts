import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import { coldHolding, coolingCured, coolingUncured, type CriticalLimit } from '@larderbook/haccp';
import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { english, englishLimits, inEnglish } from '../platform/in-english.test-data';
import { sayTold } from '../platform/told';
import { planFaults as faultsOf } from './plan-faults';
import { planWarnings as warningsOf } from './plan-warnings';

const planFaults = (...asked: Parameters<typeof faultsOf>) => faultsOf(...asked).map(inEnglish);
const planWarnings = (content: Parameters<typeof warningsOf>[0], product: Parameters<typeof warningsOf>[1]) =>
  warningsOf(content, product, englishLimits).map(inEnglish);
import { listStarters } from './starter-plans';
import { supported } from './with-support.test-data';

/** The sausage plan, with what a case wants different. */
function aPlan(changed: (plan: PlanContent) => void = () => {}): PlanContent {
  const [sausage] = listStarters(english).starters;
  if (!sausage) throw new Error('There is no starter plan');
  const content = supported(sausage.content);
  changed(content);
  return content;
}

const point = (plan: PlanContent, name: string): ControlPoint => {
  const found = plan.controlPoints.find((one) => one.name === name);
  if (!found) throw new Error(`There is no control point ${name}`);
  return found;
};
const without = (name: string) => (plan: PlanContent) => void (plan.controlPoints = plan.controlPoints.filter((one) => one.name !== name));

describe('a plan', () => {
  test('that controls every likely hazard can be adopted', () => {
    expect(planFaults(aPlan())).toEqual([]);
  });

  test('with a likely hazard and no critical control point for it cannot', () => {
    expect(planFaults(aPlan(without('Curing salt')))).toEqual([
      'Weighing curing salt and ingredients: “Too much nitrite: it is toxic in excess” is likely, but no critical control point controls it. Add one at this step, or name the one that does under its control.',
    ]);
  });

  test('may leave a hazard that is not likely to other measures', () => {
    expect(planFaults(aPlan(without('Cold storage')))).toEqual([]);
  });

  test('may not rest a likely hazard on a prerequisite programme', () => {
    const faults = planFaults(aPlan((plan) => void (point(plan, 'Curing salt').kind = 'prerequisite')));
    expect(faults).toHaveLength(1);
  });

  test('cannot hang a control point on a step that is not there', () => {
    expect(planFaults(aPlan((plan) => void (point(plan, 'Cold storage').stepId = v7())))).toEqual([
      'Cold storage: its step is not in the flow diagram.',
    ]);
  });

  test('cannot judge one value by limits in different units', () => {
    const { source } = coldHolding;
    const limits = [
      { limitId: v7(), limit: { kind: 'range', measured: 'pH', max: 4600, source } },
      { limitId: v7(), limit: { kind: 'range', measured: 'percent', min: 2500, source } },
    ] as ControlPoint['limits'];
    const mixed = (some: ControlPoint['limits']) => faultsOf(aPlan((plan) => void (point(plan, 'Cold storage').limits = some)));
    expect(mixed(limits)).toMatchObject([{ code: 'units-mixed', figures: { point: 'Cold storage' } }]);
    expect(mixed(limits.slice(0, 1))).toEqual([]);
  });

  test('cannot ask for one value where a series of readings is judged', () => {
    expect(planFaults(aPlan((plan) => void (point(plan, 'Chilling').takenAs = 'value')))).toEqual([
      'Chilling: its limit is judged from a series of readings, but it is recorded as one value.',
      'Chilling: what the product lies in is read only with a series of readings.',
    ]);
  });

  test.each([
    ['no cook', undefined],
    ['a cook of another plan', v7()],
  ])('cannot count a chill from %s', (_case, follows) => {
    expect(planFaults(aPlan((plan) => void (point(plan, 'Chilling').follows = follows)))).toEqual([
      'Chilling: name the cooking control point whose end starts its clock.',
    ]);
  });

  test('cannot count a chill from itself', () => {
    const faults = planFaults(aPlan((plan) => void (point(plan, 'Chilling').follows = point(plan, 'Chilling').controlPointId)));
    expect(faults).toEqual(['Chilling: name the cooking control point whose end starts its clock.']);
  });

  test('may ask when chilling began between the cook and the chill', () => {
    const asking = (follows: string | undefined, more: Partial<ControlPoint> = {}) =>
      planFaults(
        aPlan((plan) => {
          const chill = point(plan, 'Chilling');
          const { source } = coldHolding;
          const limit: CriticalLimit = { kind: 'attestation', statement: 'It is in.', asks: 'moment', source };
          plan.controlPoints.push({
            ...point(plan, 'Label and allergens'),
            ...more,
            controlPointId: v7(),
            name: 'Into the chiller',
            follows: follows === 'the cook' ? chill.follows : follows,
            limits: [{ limitId: v7(), limit }],
          });
          chill.follows = plan.controlPoints.at(-1)?.controlPointId;
        }),
      );
    expect(asking('the cook')).toEqual([]);
    expect(asking(undefined)).toEqual(['Chilling: “Into the chiller” has to follow the cook whose end starts the clock.']);
    expect(asking(v7())).toContain('Into the chiller: name the cook that it follows, or nothing where it starts a fermentation.');
  });

  test('may not start a fermentation with a moment that follows something itself', () => {
    const dried = supported(listStarters(english).starters.find(({ process }) => process === 'cured dried')?.content as PlanContent);
    expect(planFaults(dried)).toEqual([]);
    point(dried, 'Fermentation begins').follows = point(dried, 'Fermentation').controlPointId;
    expect(planFaults(dried)).toContain(
      'Fermentation: “Fermentation begins” records when fermentation begins, so it may follow nothing itself.',
    );
  });

  test.each([
    ['the name of a probe', 'Chilling', 'Core', 'Chilling: “Core” is one of its probes. Give what it lies in another name.'],
    ['one value', 'Cold storage', 'Walk-in', 'Cold storage: what the product lies in is read only with a series of readings.'],
  ])('cannot read around the product under %s', (_case, where, name, fault) => {
    expect(planFaults(aPlan((plan) => void (point(plan, where).surroundings = { name })))).toEqual([fault]);
  });

  test('cannot rest on an option of 1999, or on a figure that nobody has read, without a word on its support', () => {
    const bare = (limit: CriticalLimit) => planFaults(aPlan((plan) => void (point(plan, 'Chilling').limits = [{ limitId: v7(), limit }])));
    expect(bare(coolingUncured)).toEqual([expect.stringMatching(/^Chilling: Since 14 December 2022/)]);
    expect(bare(coolingCured)).toEqual([
      expect.stringMatching(/^Chilling: nobody here has read its figure in the source \(FSIS Compliance Guidelines/),
      expect.stringMatching(/^Chilling: Since 14 December 2022/),
    ]);
    const inSpanish = sayTold({ language: 'es', timeZone: 'UTC', timeStyle: 'international' });
    const plan = aPlan((draft) => void (point(draft, 'Chilling').limits = [{ limitId: v7(), limit: coolingUncured }]));
    expect(faultsOf(plan).map(inSpanish)).toEqual([expect.stringMatching(/^Chilling: Desde el 14 de diciembre de 2022/)]);
    const source = { ...coolingCured.source, support: { own: 'Letter in folder 3' } };
    expect(bare({ ...coolingCured, source })).toEqual([]);
  });

  test('cannot hold a limit without a figure', () => {
    const plan = aPlan(
      (plan) => void (point(plan, 'Cold storage').limits = [{ limitId: v7(), limit: { ...coldHolding, max: undefined } }]),
    );
    expect(planFaults(plan)).toEqual(['Cold storage: There is neither a least nor a most.']);
  });
});

describe('before adopting a plan its owner is told', () => {
  const product = { name: 'Kiln sausage', process: 'cured smoked cooked' } as const;

  test('nothing when every figure is confirmed', () => {
    expect(planWarnings(aPlan(), product)).toEqual([]);
  });

  test('that the plan is for another process than the product', () => {
    expect(planWarnings(aPlan(), { name: 'Sunday stew', process: 'cook-chill' })).toEqual([
      'The plan is for the process “Cured, smoked and cooked”, but Sunday stew is made by “Cooked and chilled”.',
    ]);
  });
});
