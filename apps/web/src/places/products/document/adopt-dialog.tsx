import { adoptPlan, type Plan } from '@larderbook/contracts';
import { useState } from 'react';
import { check } from '../../../api/check';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { NotSaved } from '../not-saved';
import { useIdentified } from '../use-identified';
import { useShop } from '../../../api/use-shop';
import { useWriting } from '../use-writing';
import { PlanCaution } from './plan-caution';
import { Sentences } from './sentences';
import { supportOf } from './support-of';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

type AdoptDialogProps = { plan: Plan; replaces: number | undefined; onClose: () => void };

export function AdoptDialog({ plan: { planId, version, warnings, content }, replaces, onClose }: AdoptDialogProps) {
  const say = useSay('plans');
  const { name } = useShop();
  const { id, draft: statement, change } = useIdentified(() => say('usual-statement'));
  const confirmed = supportOf(content, say, useLimits());
  const [error, setError] = useState<string>();
  const [today] = useState(() => Date.now());
  const writing = useWriting(adoptPlan);
  const sign = () => {
    const { value, errors } = check(adoptPlan.body, { planId, statement });
    setError(errors?.statement);
    if (!value) return;
    writing.mutate(
      { adoptionId: id, ...value },
      {
        onSuccess: () => {
          announce(say('adopted', { version }));
          onClose();
        },
      },
    );
  };
  return (
    <Dialog
      title={say('adopt-title', { version })}
      onClose={onClose}
      actions={
        <Button look="primary" busy={writing.isPending && say('signing')} onClick={sign}>
          {say('sign-and-adopt')}
        </Button>
      }
    >
      <Stack>
        <TextArea label={say('what-you-sign')} value={statement} error={error} maxLength={2000} onChange={change} />
        <p>
          <strong>{say('signed-by', { who: name, day: { at: today, show: 'day' } })}</strong>
        </p>
        <p>{replaces === undefined ? say('freezes-first', { version }) : say('freezes-next', { version, before: replaces })}</p>
        {confirmed.length > 0 && (
          <p>
            <strong>{say('with-it-you-confirm')}</strong>
          </p>
        )}
        <Sentences said={confirmed} />
        {warnings.length > 0 && (
          <p>
            <strong>{say('know-this')}</strong>
          </p>
        )}
        <Sentences said={warnings} />
        <PlanCaution />
        <NotSaved error={writing.error} />
      </Stack>
    </Dialog>
  );
}
