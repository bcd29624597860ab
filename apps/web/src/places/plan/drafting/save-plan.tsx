import { recordPlan, type Product } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Dialog } from '../../../ui/dialog';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { NotSaved } from '../not-saved';
import { useWriting } from '../use-writing';
import { checkPlan } from './plan-draft';
import type { Drafting } from './with-draft';

/** Saving the draft as the next version, or throwing it away. A version binds nobody until it is adopted. */
export function SavePlan({ drafting, product }: { drafting: Drafting; product: Product }) {
  const { draft, errors, keep, productId } = drafting;
  const navigate = useNavigate();
  const [isThrowing, setThrowing] = useState(false);
  const writing = useWriting(recordPlan);
  const next = (product.plans[0]?.version ?? 0) + 1;
  const save = () => {
    const { value } = checkPlan(draft, productId);
    keep({ ...draft, tried: true });
    if (!value) return;
    writing.mutate({ planId: draft.planId, ...value }, {
      onSuccess: async ({ planId, version }) => {
        announce(`Plan ${version} is in the book. It binds nobody until it is adopted.`);
        await navigate({ to: '/plans/$planId', params: { planId } });
        keep(undefined);
      },
    });
  };
  const throwAway = async () => {
    await navigate({ to: '/products/$productId', params: { productId } });
    keep(undefined);
  };
  const missing = Object.keys(errors).length;
  return (
    <Stack>
      {missing > 0 && (
        <Problem
          error={{
            title: missing === 1 ? 'One thing is missing.' : `${missing} things are missing.`,
            detail: 'They are marked above, beside their fields.',
          }}
        />
      )}
      <NotSaved error={writing.error} />
      <Row>
        <Button look="primary" busy={writing.isPending && 'Writing it into the book…'} onClick={save}>
          Save as plan {next}
        </Button>
        <Button look="quiet" onClick={() => setThrowing(true)}>Throw the draft away…</Button>
      </Row>
      {isThrowing && (
        <Dialog
          title="Throw the draft away?" closeLabel="Keep it" onClose={() => setThrowing(false)}
          actions={<Button onClick={() => void throwAway()}>Throw it away</Button>}
        >
          <p>What was written here since {draft.from} is then nowhere. The versions in the book stay as they are.</p>
        </Dialog>
      )}
    </Stack>
  );
}
