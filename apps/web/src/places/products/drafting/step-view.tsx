import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { PageHeader } from '../../../ui/page-header';
import { Section } from '../../../ui/section';
import { Row, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import flow from '../document/flow-diagram.module.css';
import { pointsAt, type Step } from '../document/plan-words';
import { LineHands } from '../line-hands';
import { BackToDraft } from './back-to-draft';
import css from './drafting.module.css';
import { addStep, changeStep, emptyHazard, emptyPoint, emptyStep, mayRemoveStep, moveStep, putPoint, removeStep } from './edit-plan';
import { HazardFields } from './hazard-fields';
import { errorsUnder } from './plan-draft';
import { useGoing } from './use-going';
import type { Drafting } from './with-draft';
import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';

type StepViewProps = { drafting: Drafting; step: Step };

export function StepView({ drafting, step }: StepViewProps) {
  const say = useSay('plan-drafts');
  const { content, change, productId } = drafting;
  const number = content.steps.indexOf(step) + 1;
  const errors = errorsUnder(drafting.errors, `steps.${number - 1}`);
  const setHazards = (hazards: Step['hazards']) => change(changeStep(content, step.stepId, { hazards }));
  const [added, setAdded] = useState<number>();
  const addHazard = () => {
    setAdded(step.hazards.length);
    setHazards([...step.hazards, emptyHazard()]);
  };
  return (
    <Stack gap="wide">
      <Stack>
        <PageHeader
          over={
            <>
              <BackToDraft productId={productId} /> · {say('step-of', { number, count: content.steps.length })}
            </>
          }
          title={step.name || say('new-step')}
          actions={<LineHands called={step.name || say('this-step')} onMove={(by) => change(moveStep(content, step.stepId, by))} />}
        />
        <TextField
          label={say('step-name')}
          autoComplete="off"
          maxLength={120}
          value={step.name}
          error={errors.name}
          onChange={(name) => change(changeStep(content, step.stepId, { name }))}
        />
      </Stack>
      <Section title={say('hazards')}>
        {step.hazards.length === 0 && <p>{say('name-every-hazard')}</p>}
        <ol className={css.lines}>
          {step.hazards.map((hazard, i) => (
            <HazardFields
              key={i}
              hazard={hazard}
              isNew={i === added}
              number={i + 1}
              errors={errorsUnder(errors, `hazards.${i}`)}
              onChange={(next) => setHazards(step.hazards.with(i, next))}
              onRemove={() => setHazards(step.hazards.toSpliced(i, 1))}
            />
          ))}
        </ol>
        <Button onClick={addHazard}>{say('add-hazard')}</Button>
      </Section>
      <PointsHere drafting={drafting} step={step} />
      <Leave drafting={drafting} step={step} />
    </Stack>
  );
}

function PointsHere({ drafting, step: { stepId } }: StepViewProps) {
  const say = useSay('plan-drafts');
  const { content, change, productId } = drafting;
  const going = useGoing(productId);
  const sayPlans = useSay('plans');
  const add = () => {
    const point = emptyPoint(stepId);
    change(putPoint(content, point));
    void going.toPoint(point.controlPointId);
  };
  return (
    <Section title={say('points-here')}>
      <ul className={css.points}>
        {pointsAt(content, stepId).map(({ controlPointId, kind, name }) => (
          <li key={controlPointId} className={flow.tag} data-kind={kind}>
            <Link className={flow.tagName} to="/products/$productId/plan/points/$controlPointId" params={{ productId, controlPointId }}>
              {name || say('without-a-name')}
            </Link>
            <span className={flow.small}>{sayPlans(codeOf('kind', kind))}</span>
          </li>
        ))}
      </ul>
      <Button onClick={add}>{say('add-point')}</Button>
    </Section>
  );
}

function Leave({ drafting, step: { stepId } }: StepViewProps) {
  const say = useSay('plan-drafts');
  const { content, change, productId } = drafting;
  const going = useGoing(productId);
  const next = content.steps[content.steps.findIndex((step) => step.stepId === stepId) + 1];
  const mayRemove = mayRemoveStep(content, stepId);
  const addAfter = () => {
    const step = emptyStep();
    change(addStep(content, step, stepId));
    void going.toStep(step.stepId);
  };
  const remove = async () => {
    await going.toPlan();
    change(removeStep(content, stepId));
  };
  return (
    <Stack gap="near">
      <Row>
        <Button look="primary" onClick={() => void going.toPlan()}>
          {say('back-to-plan')}
        </Button>
        {next && (
          <Button onClick={() => void going.toStep(next.stepId)}>
            {next.name ? say('next-step', { name: next.name }) : say('next-unnamed')}
          </Button>
        )}
        <Button onClick={addAfter}>{say('add-step-after')}</Button>
        {mayRemove && (
          <Button look="quiet" onClick={() => void remove()}>
            {say('remove-step')}
          </Button>
        )}
      </Row>
      {!mayRemove && <p>{say('step-holds-points')}</p>}
    </Stack>
  );
}
