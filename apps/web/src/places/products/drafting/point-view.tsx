import type { ControlPoint } from '@larderbook/contracts';
import { Button } from '../../../ui/button';
import { PageHeader } from '../../../ui/page-header';
import { Section } from '../../../ui/section';
import { Row, Stack } from '../../../ui/stack';
import { PlanCaution } from '../document/plan-caution';
import { stepName } from '../document/plan-words';
import { LimitsField } from '../limits/limits-field';
import { BackToDraft } from './back-to-draft';
import { addChillStart, putPoint, removePoint } from './edit-plan';
import { errorsUnder } from './plan-draft';
import { PointFields } from './point-fields';
import { ProcedureFields } from './procedure-fields';
import { RecordedFields } from './recorded-fields';
import { useGoing } from './use-going';
import type { Drafting } from './with-draft';
import { useSay } from '../../../ui/voice';

/** 9 CFR 417.2(c) lists what a plan must have for a control point. */
export function PointView({ drafting, point }: { drafting: Drafting; point: ControlPoint }) {
  const sayDrafts = useSay('plan-drafts');
  const say = useSay('plan-points');
  const { content, change, productId } = drafting;
  const going = useGoing(productId);
  const errors = errorsUnder(drafting.errors, `controlPoints.${content.controlPoints.indexOf(point)}`);
  const put = (next: ControlPoint) => change(putPoint(content, next));
  const remove = async () => {
    await going.toPlan();
    change(removePoint(content, point.controlPointId));
  };
  return (
    <Stack gap="wide">
      <Stack>
        <PageHeader
          over={
            <>
              <BackToDraft productId={productId} /> · {stepName(content, point.stepId)}
            </>
          }
          title={point.name || say('new-point')}
        />
        <PointFields point={point} steps={content.steps} errors={errors} onChange={put} />
      </Stack>
      <Section title={say('what-is-recorded')}>
        <RecordedFields
          point={point}
          others={content.controlPoints.filter((other) => other !== point)}
          errors={errors}
          onChange={put}
          onAddChillStart={() => change(addChillStart(content, point, say))}
        />
      </Section>
      <Section title={say('limits')}>
        <LimitsField point={point} error={errors.limits} onChange={(limits) => put({ ...point, limits })} />
      </Section>
      <Section title={say('monitoring-and-action')}>
        <ProcedureFields point={point} errors={errors} onChange={put} />
      </Section>
      <PlanCaution />
      <Row>
        <Button look="primary" onClick={() => void going.toPlan()}>
          {sayDrafts('back-to-plan')}
        </Button>
        <Button onClick={() => void going.toStep(point.stepId)}>{say('to-its-step')}</Button>
        <Button look="quiet" onClick={() => void remove()}>
          {say('remove')}
        </Button>
      </Row>
    </Stack>
  );
}
