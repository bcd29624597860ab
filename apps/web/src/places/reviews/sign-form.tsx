import { signReview } from '@larderbook/contracts';
import { useState } from 'react';
import { useSession } from '../../api/session';
import { useSend } from '../../api/use-send';
import { newId } from '../../outbox/new-id';
import { announce } from '../../ui/announcer';
import { Button } from '../../ui/button';
import { Caution } from '../../ui/caution';
import { Form } from '../../ui/form';
import { Problem } from '../../ui/problem';
import { Stack } from '../../ui/stack';
import { TextArea } from '../../ui/text-area';
import type { Review } from './review-view';
import css from './signature.module.css';
import { statementFor } from './statement-for';

/** Signs the review. It needs the network: only the record book knows that nothing was recorded in the meantime. */
export function SignForm({ review: { lot, findings, soleWorker } }: { review: Review }) {
  const who = useSession();
  const [reviewId] = useState(newId);
  const [statement, setStatement] = useState(() => statementFor(lot.code, findings));
  const { send, busy, errors, problem } = useSend(signReview, () => announce(`Signed. Lot ${lot.code} is cleared to ship.`));
  return (
    <div className={css.form}>
      <Form errors={errors} busy={busy} onSubmit={() => send({ reviewId, lotId: lot.lotId, statement })}>
        <Stack>
          <TextArea
            label="I sign that"
            hint="Change it where it does not say what you found."
            rows={4}
            maxLength={2000}
            value={statement}
            onChange={setStatement}
            error={errors.statement}
          />
          <p className={css.hand}>{who?.name}</p>
          {soleWorker && (
            <p>
              You made records of this lot yourself, and you are the only one who works here. Where practicable the review is done by
              somebody else (9 CFR 417.5(c)); the record will say that it was not.
            </p>
          )}
          <Caution>
            With your signature this lot may leave. Larderbook compares records with limits; it does not taste, smell or see the product.
            You decide.
          </Caution>
          {problem !== undefined && <Problem error={problem} />}
          <Button type="submit" look="primary" busy={busy && 'Signing…'}>
            Sign, and clear to ship
          </Button>
        </Stack>
      </Form>
    </div>
  );
}
