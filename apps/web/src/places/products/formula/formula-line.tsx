import type { listItems, ReplyOf } from '@larderbook/contracts';
import { NumberField } from '../../../ui/number-field';
import { FindField } from '../../../ui/find-field';
import { LineHands, type LineHandsProps } from '../line-hands';
import type { DraftLine, LineChange } from './formula-draft';
import css from './formula.module.css';
import type { Restricted } from './restricted';
import { LimitBeside, PpmOf, Within } from './restricted-view';
import { useSay } from '../../../ui/voice';

export type Item = ReplyOf<typeof listItems>['items'][number];
type FormulaLineProps = Pick<LineHandsProps, 'onMove' | 'onRemove'> & {
  line: DraftLine;
  /** A line just added takes the focus. */
  isNew: boolean;
  number: number;
  items: Item[];
  fault: string | undefined;
  restricted: Restricted | undefined;
  onChange: (change: LineChange) => void;
};

export function FormulaLine(props: FormulaLineProps) {
  const say = useSay('formulas');
  const { line, isNew, number, items, fault, restricted, onChange, onMove, onRemove } = props;
  const called = say(line.part === 'meat' ? 'numbered-meat' : 'numbered-ingredient', { number });
  const item = items.find(({ itemId }) => itemId === line.itemId);
  return (
    <li className={css.line}>
      <FindField
        label={called}
        autoFocus={isNew}
        choices={items.map(({ itemId, name }) => ({ value: itemId, name }))}
        value={item?.itemId ?? ''}
        onChange={(itemId) => onChange({ itemId })}
        error={item ? undefined : fault}
      />
      <NumberField
        label={say('share-of-the-meat-block', { of: item?.name ?? called })}
        error={item ? fault : undefined}
        unit="%"
        decimals={4}
        value={line.percent}
        onChange={(percent) => onChange({ percent })}
      />
      <div className={css.hands}>
        <LineHands called={item?.name ?? called} onMove={onMove} onRemove={onRemove} />
      </div>
      {restricted && (
        <div className={css.judged}>
          <PpmOf restricted={restricted} holds={item?.fractionPercent} />
          <LimitBeside restricted={restricted} />
          <Within restricted={restricted} />
        </div>
      )}
    </li>
  );
}
