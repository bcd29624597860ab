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
import { useSay } from '../../ui/voice';
import type { Review } from './review-view';
import css from './signature.module.css';
import { statementFor } from './statement-for';

/** It needs the network: only the server knows that nothing was recorded in the meantime. */
export function SignForm({ review: { lot, findings, soleWorker } }: { review: Review }) {
  const say = useSay('reviews');
  const who = useSession();
  const [reviewId] = useState(newId);
  const [changed, setChanged] = useState<string>();
  const statement = changed ?? statementFor(lot.code, findings, say); // findings may come while it is read
  const { send, busy, errors, problem } = useSend(signReview, () => announce(say('signed-announced', { lot: lot.code })));
  return (
    <div className={css.form}>
      <Form errors={errors} busy={busy} onSubmit={() => send({ reviewId, lotId: lot.lotId, statement })}>
        <Stack>
          <TextArea
            label={say('i-sign')}
            hint={say('change-where')}
            rows={4}
            maxLength={2000}
            value={statement}
            onChange={setChanged}
            error={errors.statement}
          />
          <p className={css.hand}>{who?.name}</p>
          {soleWorker && <p>{say('sole-worker')}</p>}
          <Caution>{say('you-decide')}</Caution>
          {problem !== undefined && <Problem error={problem} />}
          <Button type="submit" look="primary" busy={busy && say('signing')}>
            {say('sign')}
          </Button>
        </Stack>
      </Form>
    </div>
  );
}
