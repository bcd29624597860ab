import type { ControlPoint } from '@larderbook/contracts';
import { expect, test } from 'vitest';
import { inEnglish } from '../../../ui/in-english.test-data';
import { aPlan, aPoint, pointIds, stepIds } from '../test-plans/a-plan';
import { addChillStart, addStep, changeStep, emptyPoint, emptyStep, moveStep, putPoint, removePoint, removeStep } from './edit-plan';
import { checkPlan, draftOfContent, draftOfPlan, edited, errorsUnder, planDraft, withOwnIds } from './plan-draft';

const say = inEnglish('plan-points');
const plan = aPlan();
const productId = '01990000-0000-7000-8000-00000000000a';
const names = ({ steps }: typeof plan) => steps.map(({ name }) => name);
const points = ({ controlPoints }: typeof plan) => controlPoints.map(({ name }) => name);

test('a step is put after another one, or at the end', () => {
  const resting = { ...emptyStep(), name: 'Resting' };
  expect(names(addStep(plan, resting, stepIds.cooking))).toEqual(['Trimming', 'Cooking', 'Resting', 'Chilling']);
  expect(names(addStep(plan, resting))).toEqual(['Trimming', 'Cooking', 'Chilling', 'Resting']);
});

test('control points follow their step when it moves', () => {
  const moved = moveStep(plan, stepIds.chilling, -1);
  expect(names(moved)).toEqual(['Trimming', 'Chilling', 'Cooking']);
  expect(points(moved)).toEqual(['Chilling', 'Cooking']);
});

test('the first step stays first and the last stays last', () => {
  expect(moveStep(plan, stepIds.trimming, -1)).toBe(plan);
  expect(moveStep(plan, stepIds.chilling, 1)).toBe(plan);
});

test('a step at which a control point hangs is not removed, an empty one is', () => {
  expect(removeStep(plan, stepIds.cooking)).toBe(plan);
  expect(names(removeStep(plan, stepIds.trimming))).toEqual(['Cooking', 'Chilling']);
});

test('a control point is added at its step and replaced under its id', () => {
  const added = putPoint(plan, aPoint({ controlPointId: 'new', stepId: stepIds.trimming, name: 'Knives' }));
  expect(points(added)).toEqual(['Knives', 'Cooking', 'Chilling']);
  expect(points(putPoint(added, aPoint({ name: 'Roasting' })))).toEqual(['Knives', 'Roasting', 'Chilling']);
});

test('removing the cook takes the clock of the chill with it', () => {
  expect(removePoint(plan, pointIds.cooking).controlPoints).toMatchObject([{ name: 'Chilling', follows: undefined }]);
});

test('a chill that has to begin in time is given what asks for it, between the cook and itself', () => {
  const chill = plan.controlPoints[1] as ControlPoint;
  const asking = addChillStart(plan, chill, say);
  const [cook, into, after] = asking.controlPoints;
  expect(points(asking)).toEqual(['Cooking', 'Into the chiller', 'Chilling']);
  expect(into).toMatchObject({ follows: cook?.controlPointId, takenAs: 'attestation', limits: [{ limit: { asks: 'moment' } }] });
  expect(after?.follows).toBe(into?.controlPointId);
  expect(checkPlan(draftOfContent(asking), productId).errors).toBeUndefined();
  // Without it the chill follows its cook again.
  expect(removePoint(asking, into?.controlPointId ?? '')).toEqual(plan);
});

test('a starter plan is copied under ids of its own, and its parts still name one another', () => {
  const copy = withOwnIds(plan);
  const [cook, chill] = copy.controlPoints;
  expect([cook?.stepId, chill?.stepId]).toEqual([copy.steps[1]?.stepId, copy.steps[2]?.stepId]);
  expect(chill?.follows).toBe(cook?.controlPointId);
  const before = JSON.stringify(plan);
  for (const id of [cook?.controlPointId, cook?.stepId, cook?.limits[0]?.limitId]) expect(before).not.toContain(id);
  expect({
    ...copy,
    steps: copy.steps.length,
    controlPoints: points(copy),
  }).toEqual({ ...plan, steps: 3, controlPoints: ['Cooking', 'Chilling'] });
});

test('a complete draft is a request as it stands; an edit makes it another version', () => {
  const draft = draftOfContent(plan, 'a starter plan');
  expect(checkPlan(draft, productId).value).toEqual({ productId, content: draft.content });
  expect(edited(draft, changeStep(draft.content, stepIds.trimming, { name: 'Boning' })).planId).not.toBe(draft.planId);
});

test('what is missing stands under the name of its field', () => {
  const content = putPoint(changeStep(plan, stepIds.cooking, { name: '' }), emptyPoint(stepIds.trimming));
  const { errors = {} } = checkPlan(draftOfContent(content), productId);
  expect(errors['steps.1.name']).toBe('write-a-name');
  expect(errorsUnder(errors, 'controlPoints.0')).toMatchObject({
    name: 'write-a-name',
    limits: 'one-limit-at-least',
    'monitoring.who': 'by-whom',
  });
  expect(errorsUnder(errors, 'controlPoints.1')).toEqual({});
});

test('a half-written draft is read back from the device as it was', () => {
  const shown = { version: 2, content: putPoint(plan, emptyPoint(stepIds.trimming)) };
  const draft = draftOfPlan(shown);
  expect(planDraft.parse(JSON.parse(JSON.stringify(draft)))).toEqual(draft);
  expect(draft).toMatchObject({ basedOn: 2 });
});
