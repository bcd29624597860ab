import type { PlanContent } from '@larderbook/contracts';
import { useState } from 'react';
import { Button } from '../../../ui/button';
import { NumberField } from '../../../ui/number-field';
import { numberOf } from '../../../ui/keypad-text';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import {
  addLine,
  changeLine,
  changeYield,
  meatSum,
  moveLine,
  removeLine,
  type DraftLine,
  type FormulaDraft,
  type Part,
} from './formula-draft';
import type { FormulaFaults } from './formula-faults';
import { FormulaLine, type Item } from './formula-line';
import css from './formula.module.css';
import { restrictedIn, type Carrier } from './restricted';
import { useSay } from '../../../ui/voice';

type FormulaEditorProps = {
  draft: FormulaDraft;
  items: Item[];
  plan: PlanContent | undefined;
  faults: FormulaFaults | undefined;
  onChange: (draft: FormulaDraft) => void;
};

/** Meats are added up and restricted substances judged while they are typed. */
export function FormulaEditor({ draft, items, plan, faults, onChange }: FormulaEditorProps) {
  const say = useSay('formulas');
  const [added, setAdded] = useState<string>();
  const add = (part: Part) => {
    const next = addLine(draft, part);
    setAdded(next.lines.findLast((line) => line.part === part)?.lineId);
    onChange(next);
  };
  const carriers = draft.lines.map((line) => carrierOf(line, items));
  const linesOf = (part: Part) =>
    draft.lines.flatMap((line, i) => {
      if (line.part !== part) return [];
      const carrier = carriers[i];
      return [
        <FormulaLine
          key={line.lineId}
          line={line}
          isNew={line.lineId === added}
          number={draft.lines.slice(0, i + 1).filter((other) => other.part === part).length}
          items={items.filter(({ kind }) => kind === part)}
          fault={faults?.lines[line.lineId]}
          restricted={carrier && restrictedIn(carrier, carriers, plan)}
          onChange={(change) => onChange(changeLine(draft, line.lineId, change))}
          onMove={(by) => onChange(moveLine(draft, line.lineId, by))}
          onRemove={() => onChange(removeLine(draft, line.lineId))}
        />,
      ];
    });
  return (
    <Stack>
      <Section title={say('meats')} aside={<MeatSum draft={draft} />}>
        <ol className={css.lines}>{linesOf('meat')}</ol>
        {faults?.meats && (
          <p className={css.fault} role="alert">
            {faults.meats}
          </p>
        )}
        <Button onClick={() => add('meat')}>{say('add-meat')}</Button>
      </Section>
      <Section title={say('ingredients')}>
        <ol className={css.lines}>{linesOf('ingredient')}</ol>
        <Button onClick={() => add('ingredient')}>{say('add-ingredient')}</Button>
      </Section>
      <Section title={say('yield')}>
        <NumberField
          label={say('expected-yield')}
          unit="%"
          hint={say('yield-hint')}
          usual={say('yield-usual')}
          decimals={4}
          value={draft.expectedYield}
          error={faults?.expectedYield}
          onChange={(expectedYield) => onChange(changeYield(draft, expectedYield))}
        />
      </Section>
    </Stack>
  );
}

function MeatSum({ draft }: { draft: FormulaDraft }) {
  const say = useSay('formulas');
  const { percent, isWhole } = meatSum(draft);
  return (
    <p className={css.sum} role="status">
      <strong>{say('together', { percent })}</strong>
      <Status state={isWhole ? 'met' : 'undetermined'} word={say(isWhole ? 'whole-meat-block' : 'must-be-whole')} />
    </p>
  );
}

function carrierOf({ itemId, percent }: DraftLine, items: Item[]): Carrier {
  const item = items.find((each) => each.itemId === itemId);
  return {
    itemName: item?.name ?? '',
    percent: numberOf(percent) ?? NaN,
    substance: item?.substance,
    fractionPercent: item?.fractionPercent,
  };
}
