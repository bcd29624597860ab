import type { PlanContent } from '@larderbook/contracts';
import { changedFields, type Difference } from './difference';
import { hazardDifferences } from './hazard-differences';
import { pointDifferences } from './point-differences';

/** Everything in which a later version of a plan differs from an earlier one, in words, from its head downward. */
export function planDifferences(before: PlanContent, after: PlanContent): Difference[] {
  return [...headDifferences(before, after), ...stepDifferences(before, after), ...pointDifferences(before, after)];
}

const headDifferences = (before: PlanContent, after: PlanContent): Difference[] =>
  changedFields('The plan', [
    ['Title', before.title, after.title],
    ['Process', before.process, after.process],
    ['Intended use', before.intendedUse, after.intendedUse],
    ['Notes', before.notes, after.notes],
  ]);

function stepDifferences(before: PlanContent, after: PlanContent): Difference[] {
  const earlier = new Map(before.steps.map((step) => [step.stepId, step]));
  const gone = before.steps.filter(({ stepId }) => !after.steps.some((step) => step.stepId === stepId));
  return [
    ...gone.map(({ name }) => ({ where: name, what: 'This step was removed.' })),
    ...orderDifference(before, after),
    ...after.steps.flatMap((step) => {
      const was = earlier.get(step.stepId);
      const named = was
        ? changedFields(step.name, [['Name of the step', was.name, step.name]])
        : [{ where: step.name, what: 'This step is new.' }];
      return [...named, ...hazardDifferences(step.name, was?.hazards ?? [], step.hazards)];
    }),
  ];
}

function orderDifference(before: PlanContent, after: PlanContent): Difference[] {
  const kept = (one: PlanContent, other: PlanContent) =>
    one.steps.filter(({ stepId }) => other.steps.some((step) => step.stepId === stepId));
  const [was, is] = [kept(before, after), kept(after, before)];
  if (was.every(({ stepId }, i) => is[i]?.stepId === stepId)) return [];
  const say = (steps: PlanContent['steps']) => steps.map(({ name }) => name).join(', ');
  return [{ where: 'The plan', what: 'Order of the steps', before: say(was), after: say(is) }];
}
