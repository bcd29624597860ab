import { setUpShop } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { ApiProblem } from '../../../api/api-problem';
import type { FieldErrors } from '../../../api/check';
import { enter } from '../../../api/session';
import { useSend } from '../../../api/use-send';
import { newId } from '../../../outbox/new-id';
import { Button } from '../../../ui/button';
import { sayFault } from '../../../ui/fault-words';
import { Form } from '../../../ui/form';
import { LinkButton } from '../../../ui/link-button';
import { PageHeader } from '../../../ui/page-header';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { Steps } from '../../../ui/steps';
import { useSay } from '../../../ui/voice';
import { emptyDraft, setUpSteps, stepErrors, stepOf, type SetUpStep } from './set-up-draft';
import { SetUpQuestion } from './set-up-questions';

export function SetUpShop() {
  const say = useSay('welcome');
  const sayShared = useSay('shared');
  const nameOf = (each: SetUpStep) => say(codeOf('step', each));
  const queries = useQueryClient();
  const navigate = useNavigate();
  const [ids] = useState(() => ({ establishmentId: newId(), personId: newId() }));
  const [draft, setDraft] = useState(() => emptyDraft(navigator.language));
  const [step, setStep] = useState<SetUpStep>('shop');
  const [wrong, setWrong] = useState<FieldErrors>({});
  const setUp = useSend(setUpShop, (who) => {
    enter(queries, who);
    void navigate({ to: '/' });
  });

  const at = setUpSteps.indexOf(step);
  const go = (to: number) => {
    setWrong({});
    setStep(setUpSteps[to] ?? step);
  };
  const next = () => {
    const errors = stepErrors(step, draft);
    setWrong(errors);
    if (Object.keys(errors).length > 0) return;
    if (step !== 'look over') return go(at + 1);
    setUp.send({
      establishmentId: ids.establishmentId,
      owner: { personId: ids.personId, ...draft.owner },
      establishment: draft.establishment,
    });
  };
  const code = setUp.problem instanceof ApiProblem ? setUp.problem.code : undefined;
  const toPutRight = stepOf(setUp.errors, code);

  return (
    <Stack>
      <PageHeader title={say('set-up')} />
      <Steps
        label={say('setting-up')}
        steps={setUpSteps.map((each, i) => ({ name: nameOf(each), state: i < at ? 'done' : i === at ? 'now' : 'to come' }))}
      />
      <Form errors={wrong} busy={setUp.busy} onSubmit={next}>
        <Stack>
          <SetUpQuestion step={step} draft={draft} errors={wrong} onChange={setDraft} />
          {step === 'look over' && <Refusal problem={setUp.problem} errors={setUp.errors} />}
          <Row>
            <Button type="submit" look="primary" busy={setUp.busy && say('opening-book')}>
              {step === 'look over' ? say('open-book') : sayShared('next')}
            </Button>
            {toPutRight && step === 'look over' && (
              <Button onClick={() => go(setUpSteps.indexOf(toPutRight))}>{say('change-under', { step: nameOf(toPutRight) })}</Button>
            )}
            {at > 0 ? (
              <Button onClick={() => go(at - 1)}>{sayShared('back')}</Button>
            ) : (
              <LinkButton to="/welcome">{sayShared('back')}</LinkButton>
            )}
          </Row>
        </Stack>
      </Form>
    </Stack>
  );
}

function Refusal({ problem, errors }: { problem: unknown; errors: FieldErrors }) {
  const say = useSay('welcome');
  const sayOf = useSay('faults');
  const lines = Object.values(errors).map((said) => sayFault(said, sayOf));
  if (lines.length > 0) return <Problem error={{ title: say('not-right-yet'), detail: lines.join(' ') }} />;
  if (!problem) return null;
  const isSetUp = problem instanceof ApiProblem && problem.code === 'already-set-up';
  return <Problem error={problem}>{isSetUp && <LinkButton to="/sign-in">{say('sign-in')}</LinkButton>}</Problem>;
}
