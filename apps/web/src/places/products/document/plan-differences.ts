import type { PlanContent } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { changedFields, type Difference, type Speakers } from './difference';
import { hazardDifferences } from './hazard-differences';
import { pointDifferences } from './point-differences';

export function planDifferences(before: PlanContent, after: PlanContent, speakers: Speakers): Difference[] {
  return [
    ...headDifferences(before, after, speakers),
    ...stepDifferences(before, after, speakers),
    ...pointDifferences(before, after, speakers),
  ];
}

function headDifferences(before: PlanContent, after: PlanContent, speakers: Speakers): Difference[] {
  const { say, sayProducts } = speakers;
  const madeBy = ({ process }: PlanContent) => sayProducts(codeOf('process', process));
  return changedFields(
    say('the-plan'),
    [
      [say('title'), before.title, after.title],
      [say('process'), madeBy(before), madeBy(after)],
      [say('intended-use'), before.intendedUse, after.intendedUse],
      [say('notes'), before.notes, after.notes],
    ],
    speakers,
  );
}

function stepDifferences(before: PlanContent, after: PlanContent, speakers: Speakers): Difference[] {
  const { say } = speakers;
  const earlier = new Map(before.steps.map((step) => [step.stepId, step]));
  const gone = before.steps.filter(({ stepId }) => !after.steps.some((step) => step.stepId === stepId));
  return [
    ...gone.map(({ name }) => ({ where: name, what: say('step-removed') })),
    ...orderDifference(before, after, speakers),
    ...after.steps.flatMap((step) => {
      const was = earlier.get(step.stepId);
      const named = was
        ? changedFields(step.name, [[say('step-name'), was.name, step.name]], speakers)
        : [{ where: step.name, what: say('step-new') }];
      return [...named, ...hazardDifferences(step.name, was?.hazards ?? [], step.hazards, speakers)];
    }),
  ];
}

function orderDifference(before: PlanContent, after: PlanContent, { say }: Speakers): Difference[] {
  const kept = (one: PlanContent, other: PlanContent) =>
    one.steps.filter(({ stepId }) => other.steps.some((step) => step.stepId === stepId));
  const [was, is] = [kept(before, after), kept(after, before)];
  if (was.every(({ stepId }, i) => is[i]?.stepId === stepId)) return [];
  const names = (steps: PlanContent['steps']) => steps.map(({ name }) => name).join(', ');
  return [{ where: say('the-plan'), what: say('step-order'), before: names(was), after: names(is) }];
}
