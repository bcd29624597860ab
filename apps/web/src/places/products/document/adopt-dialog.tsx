import { adoptPlan, type Plan } from '@larderbook/contracts';
import { useState } from 'react';
import { check } from '../../../api/check';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Moment } from '../../../ui/moment';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { NotSaved } from '../not-saved';
import { useIdentified } from '../use-identified';
import { useShop } from '../../../api/use-shop';
import { useWriting } from '../use-writing';
import { PlanCaution } from './plan-caution';
import { Sentences } from './sentences';
import { supportOf } from './support-of';

/** What the signature under a plan signifies, in the sense of 9 CFR 417.2(d). */
const usual = 'I have read this plan against what we really do. The establishment accepts it and will carry it out.';

type AdoptDialogProps = { plan: Plan; replaces: number | undefined; onClose: () => void };

/** Signing a plan: the statement in one's own words, the name and the day under it, and what follows from it. */
export function AdoptDialog({ plan: { planId, version, warnings, content }, replaces, onClose }: AdoptDialogProps) {
  const { name, zone } = useShop();
  const { id, draft: statement, change } = useIdentified(() => usual);
  const confirmed = supportOf(content);
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
          announce(`Plan ${version} is signed and in force.`);
          onClose();
        },
      },
    );
  };
  return (
    <Dialog
      title={`Adopt plan ${version}`}
      onClose={onClose}
      actions={
        <Button look="primary" busy={writing.isPending && 'Signing…'} onClick={sign}>
          Sign and adopt
        </Button>
      }
    >
      <Stack>
        <TextArea label="What you sign" value={statement} error={error} maxLength={2000} onChange={change} />
        <p>
          <strong>{name}</strong>, <Moment at={today} zone={zone} show="day" />
        </p>
        <p>
          With your signature plan {version} is frozen: it can be read and superseded, never changed.{' '}
          {replaces === undefined
            ? 'From then on lots can be started on it.'
            : `It takes the place of plan ${replaces} for lots started from then on; earlier ones keep to theirs.`}
        </p>
        {confirmed.length > 0 && (
          <p>
            <strong>With it you confirm:</strong>
          </p>
        )}
        <Sentences said={confirmed} />
        {warnings.length > 0 && (
          <p>
            <strong>Know this before you sign:</strong>
          </p>
        )}
        <Sentences said={warnings} />
        <PlanCaution />
        <NotSaved error={writing.error} />
      </Stack>
    </Dialog>
  );
}
