import { recordPlan, type Product } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { announce } from '../../../ui/announcer';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { NotSaved } from '../not-saved';
import { useWriting } from '../use-writing';
import { KeepOrThrow } from './keep-or-throw';
import { checkPlan } from './plan-draft';
import type { Drafting } from './with-draft';
import { useSay } from '../../../ui/voice';

/** A version binds nobody until it is adopted. */
export function SavePlan({ drafting, product }: { drafting: Drafting; product: Product }) {
  const say = useSay('plan-drafts');
  const { draft, errors, keep, productId } = drafting;
  const navigate = useNavigate();
  const writing = useWriting(recordPlan);
  const next = (product.plans[0]?.version ?? 0) + 1;
  const save = () => {
    const { value } = checkPlan(draft, productId);
    keep({ ...draft, tried: true });
    if (!value) return;
    writing.mutate(
      { planId: draft.planId, ...value },
      {
        onSuccess: async ({ planId, version }) => {
          announce(say('saved', { version }));
          await navigate({ to: '/plans/$planId', params: { planId } });
          keep(undefined);
        },
      },
    );
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
            title: say('things-missing', { count: missing }),
            detail: say('marked-above'),
          }}
        />
      )}
      <NotSaved error={writing.error} />
      <KeepOrThrow
        saveLabel={say('save-as', { version: next })}
        busy={writing.isPending}
        onSave={save}
        onThrowAway={() => void throwAway()}
        afterwards={say('then-nowhere')}
      />
    </Stack>
  );
}
