import { planBatch, type Product } from '@larderbook/contracts';
import { sayPercent } from '@larderbook/haccp';
import { useMutation } from '@tanstack/react-query';
import { useState, type FormEvent } from 'react';
import { call } from '../../../api/client';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { Caution } from '../../../ui/caution';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { CuringCaution } from '../formula/curing-caution';
import { useShop } from '../../../api/use-shop';
import { checkBatch, type BatchDraft } from './batch-draft';
import { BatchForm } from './batch-form';
import css from './batch.module.css';
import { Doses } from './doses';
import { KitchenSheet } from './kitchen-sheet';
import { WeighingSheet } from './weighing-sheet';

/** What a batch takes, worked out before anything is weighed. Nothing of it is recorded. */
export function WorkOut({ product, formula }: { product: Product; formula: Product['formulas'][number] }) {
  const { heavy, light } = useShop();
  const [draft, setDraft] = useState<BatchDraft>({
    from: 'meat',
    trimmed: '',
    trimmedUnit: heavy,
    packages: '',
    net: '',
    netUnit: light,
  });
  const [errors, setErrors] = useState<Record<string, string>>({});
  const batch = useMutation({ mutationFn: (asked: BatchDraft) => workOut(formula.formulaId, asked) });

  const change = (next: BatchDraft) => {
    setDraft(next);
    batch.reset(); // a sheet never stands beside other figures than its own
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const wrong = checkBatch(draft).errors ?? {};
    setErrors(wrong);
    if (Object.keys(wrong).length > 0) return;
    batch.mutate(draft, { onSuccess: () => announce('The weighing sheet is below.', { unseen: true }) });
  };
  return (
    <Stack gap="wide">
      <form className={css.form} onSubmit={submit} noValidate>
        <Stack>
          <BatchForm draft={draft} yieldSaid={sayPercent(formula.expectedYieldPercent)} errors={errors} onChange={change} />
          <Button type="submit" look="primary" busy={batch.isPending && 'Working it out…'}>
            Work it out
          </Button>
        </Stack>
      </form>
      {batch.error && <Problem error={batch.error} />}
      {batch.data && (
        <>
          <KitchenSheet batch={batch.data} product={product.name} formula={formula.version} at={batch.submittedAt} />
          <div className={css.onScreen}>
            <Stack gap="wide">
              <WeighingSheet batch={batch.data} title={`${product.name}, formula ${formula.version}`} />
              <Doses batch={batch.data} />
              {batch.data.doses.length > 0 && <CuringCaution />}
              <Caution title="Not a record">
                <p>
                  This sheet helps to get ready. What counts is weighed into the lot and judged there, against the meat as it was trimmed
                  that day.
                </p>
              </Caution>
              <Button onClick={() => window.print()}>Print this sheet</Button>
            </Stack>
          </div>
        </>
      )}
    </Stack>
  );
}

async function workOut(formulaId: string, draft: BatchDraft) {
  const { value } = checkBatch(draft);
  if (!value) throw new Error('A batch is worked out from fields that were checked');
  return call(planBatch, { formulaId, ...value });
}
