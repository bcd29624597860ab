import { planBatch, type Product } from '@larderbook/contracts';

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
import { useSay } from '../../../ui/voice';
import type { Say, WordsOf } from '@larderbook/messages';

/** A calculated batch is not recorded. */
export function CalculateBatch({ product, formula }: { product: Product; formula: Product['formulas'][number] }) {
  const sayShared = useSay('shared');
  const say = useSay('batches');
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
  const batch = useMutation({ mutationFn: (asked: BatchDraft) => calculate(formula.formulaId, asked, say) });

  const change = (next: BatchDraft) => {
    setDraft(next);
    batch.reset(); // a sheet never stands beside other figures than its own
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const wrong = checkBatch(draft, say).errors ?? {};
    setErrors(wrong);
    if (Object.keys(wrong).length > 0) return;
    batch.mutate(draft, { onSuccess: () => announce(say('sheet-below'), { unseen: true }) });
  };
  return (
    <Stack gap="wide">
      <form className={css.form} onSubmit={submit} noValidate>
        <Stack>
          <BatchForm draft={draft} yieldPercent={formula.expectedYieldPercent} errors={errors} onChange={change} />
          <Button type="submit" look="primary" busy={batch.isPending && say('calculating')}>
            {say('calculate')}
          </Button>
        </Stack>
      </form>
      {batch.error && <Problem error={batch.error} />}
      {batch.data && (
        <>
          <KitchenSheet batch={batch.data} product={product.name} formula={formula.version} at={batch.submittedAt} />
          <div className={css.onScreen}>
            <Stack gap="wide">
              <WeighingSheet batch={batch.data} title={say('sheet-title', { product: product.name, version: formula.version })} />
              <Doses batch={batch.data} />
              {batch.data.doses.length > 0 && <CuringCaution />}
              <Caution title={say('not-a-record')}>
                <p>{say('get-ready')}</p>
              </Caution>
              <Button onClick={() => window.print()}>{sayShared('print')}</Button>
            </Stack>
          </div>
        </>
      )}
    </Stack>
  );
}

async function calculate(formulaId: string, draft: BatchDraft, say: Say<WordsOf<'batches'>>) {
  const { value } = checkBatch(draft, say);
  if (!value) throw new Error('A batch is calculated from fields that were checked');
  return call(planBatch, { formulaId, ...value });
}
