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

type FormulaEditorProps = {
  draft: FormulaDraft;
  items: Item[];
  plan: PlanContent | undefined;
  /** Shown once a save was tried. */
  faults: FormulaFaults | undefined;
  onChange: (draft: FormulaDraft) => void;
};

/** The lines of a formula being written; the meats are added up and restricted substances judged as they are typed. */
export function FormulaEditor({ draft, items, plan, faults, onChange }: FormulaEditorProps) {
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
      <Section title="Meats" aside={<MeatSum draft={draft} />}>
        <ol className={css.lines}>{linesOf('meat')}</ol>
        {faults?.meats && (
          <p className={css.fault} role="alert">
            {faults.meats}
          </p>
        )}
        <Button onClick={() => add('meat')}>Add a meat</Button>
      </Section>
      <Section title="Ingredients">
        <ol className={css.lines}>{linesOf('ingredient')}</ol>
        <Button onClick={() => add('ingredient')}>Add an ingredient</Button>
      </Section>
      <Section title="Yield">
        <NumberField
          label="Expected yield"
          unit="%"
          hint="Packed weight as a percentage of everything that goes in"
          usual="a cooked sausage keeps 85 to 92 % (common practice, no source)"
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
  const { said, isWhole } = meatSum(draft);
  return (
    <p className={css.sum} role="status">
      <span>
        Together <strong>{said} %</strong>
      </span>
      <Status state={isWhole ? 'met' : 'undetermined'} word={isWhole ? 'The whole meat block' : 'Must come to 100 %'} />
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
