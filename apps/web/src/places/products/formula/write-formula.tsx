import { recordFormula, type PlanContent, type Product } from '@larderbook/contracts';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { check, fieldErrors } from '../../../api/check';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { numberOf } from '../../../ui/keypad-text';
import { Problem } from '../../../ui/problem';
import { Row, Stack } from '../../../ui/stack';
import { KeepOrThrow } from '../drafting/keep-or-throw';
import { useKeptDraft } from '../kept-draft';
import { NotSaved } from '../not-saved';
import { useWriting } from '../use-writing';
import { CuringCaution } from './curing-caution';
import { draftFrom, formulaDraft, linesOf, type FormulaDraft } from './formula-draft';
import { FormulaEditor } from './formula-editor';
import { formulaFaults, isFaultless, type FormulaFaults } from './formula-faults';
import type { Item } from './formula-line';
import { useSay } from '../../../ui/voice';

type WriteFormulaProps = { product: Product; items: Item[]; plan: PlanContent | undefined };

export function WriteFormula({ product, items, plan }: WriteFormulaProps) {
  const say = useSay('formulas');
  const { productId, formulas } = product;
  const navigate = useNavigate();
  const [latest] = formulas;
  const { draft: kept, keep } = useKeptDraft(formulaDraft, `formula.${productId}`);
  const [begun] = useState(() => draftFrom(formulas[0]));
  const draft = kept ?? begun;
  const [tried, setTried] = useState(false);
  const writing = useWriting(recordFormula);
  const names = new Map(items.map(({ itemId, name }) => [itemId, name]));
  const faults = tried
    ? withAnswers(formulaFaults(draft, names, say), draft, { ...contractErrors(draft, productId), ...fieldErrors(writing.error) })
    : undefined;
  const next = (formulas[0]?.version ?? 0) + 1;

  const leave = () => void navigate({ to: '/products/$productId', params: { productId } });
  const save = () => {
    setTried(true);
    const { value } = bodyOf(draft, productId);
    if (!value || !isFaultless(formulaFaults(draft, names, say))) return;
    writing.mutate(
      { formulaId: draft.formulaId, ...value },
      {
        onSuccess: ({ version }) => {
          announce(say('saved', { version }));
          keep(undefined);
          leave();
        },
      },
    );
  };
  const throwAway = () => {
    keep(undefined);
    leave();
  };
  return (
    <Stack>
      {kept && <p>{draft.basedOn === undefined ? say('not-saved') : say('not-saved-begun', { version: draft.basedOn })}</p>}
      {kept && latest && draft.basedOn !== latest.version && (
        <p>
          {' '}
          <strong>{say('written-since', { version: latest.version })}</strong>{' '}
        </p>
      )}
      <FormulaEditor draft={draft} items={items} plan={plan} faults={faults} onChange={keep} />
      <CuringCaution />
      {faults && !isFaultless(faults) && <Problem error={{ title: say('not-complete'), detail: say('beside-its-line') }} />}
      <NotSaved error={writing.error} />
      <SaveOrLeave
        isBegun={kept !== undefined}
        saveLabel={say('save-as', { version: next })}
        busy={writing.isPending}
        onSave={save}
        onThrowAway={throwAway}
        onLeave={leave}
      />
    </Stack>
  );
}

type SaveOrLeaveProps = {
  /** A draft is kept: leaving it asks once more. */
  isBegun: boolean;
  saveLabel: string;
  busy: boolean;
  onSave: () => void;
  onThrowAway: () => void;
  onLeave: () => void;
};

function SaveOrLeave({ isBegun, onLeave, ...saving }: SaveOrLeaveProps) {
  const say = useSay('shared');
  const sayDrafts = useSay('plan-drafts');
  if (isBegun) return <KeepOrThrow {...saving} afterwards={sayDrafts('then-nowhere')} />;
  return (
    <Row>
      <Button look="primary" busy={saving.busy} onClick={saving.onSave}>
        {saving.saveLabel}
      </Button>
      <Button look="quiet" onClick={onLeave}>
        {say('cancel')}
      </Button>
    </Row>
  );
}

const bodyOf = (draft: FormulaDraft, productId: string) =>
  check(recordFormula.body, { productId, expectedYieldPercent: numberOf(draft.expectedYield), lines: linesOf(draft) });

const contractErrors = (draft: FormulaDraft, productId: string) => bodyOf(draft, productId).errors;

/** The contract's or server's word stands beside a line unless the rules said something better. */
function withAnswers(faults: FormulaFaults, { lines }: FormulaDraft, errors: Record<string, string>): FormulaFaults {
  const answered = lines.flatMap(({ lineId }, i) => {
    const said = errors[`lines.${i}`] ?? errors[`lines.${i}.percent`];
    return said ? [[lineId, said] as const] : [];
  });
  return {
    ...faults,
    meats: faults.meats ?? errors.lines,
    lines: { ...Object.fromEntries(answered), ...faults.lines },
  };
}
