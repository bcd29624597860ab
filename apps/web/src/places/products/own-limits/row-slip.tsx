import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { Row } from '../../../ui/stack';
import { LimitView } from '../document/limit-view';
import drafting from '../drafting/drafting.module.css';
import type { RowDraft } from './own-draft';
import css from './own-limits.module.css';
import { RowFields } from './row-fields';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';

type RowSlipProps = {
  row: RowDraft;
  /** A row without a title is called "Figure 3". */
  number: number;
  errors: FieldErrors;
  faults: string[];
  isOpen: boolean;
  onOpen: (isOpen: boolean) => void;
  onChange: (row: RowDraft) => void;
  onRemove: () => void;
};

export function RowSlip({ row, number, errors, faults, isOpen, onOpen, onChange, onRemove }: RowSlipProps) {
  const sayShared = useSay('shared');
  const say = useSay('own-limits');
  const title = row.title || say('untitled-figure', { number });
  const missing = Object.keys(errors).length;

  return (
    <li className={drafting.slip}>
      <div className={drafting.slipHead}>
        <h3>{title}</h3>
        <Row>
          <Button
            aria-expanded={isOpen}
            aria-label={say(isOpen ? 'close-named' : 'change-named', { title })}
            onClick={() => onOpen(!isOpen)}
          >
            {isOpen ? sayShared('close') : say('change')}
          </Button>
          <Button look="quiet" aria-label={say('remove-named', { title })} onClick={onRemove}>
            {sayShared('remove')}
          </Button>
        </Row>
      </div>
      {isOpen ? <RowFields row={row} errors={errors} onChange={onChange} /> : <Reads row={row} />}
      {(faults.length > 0 || (missing > 0 && !isOpen)) && (
        <ul className={css.faults} role="alert">
          {missing > 0 && !isOpen && <li className={drafting.fault}>{say('something-missing')}</li>}
          {faults.map((fault) => (
            <li key={fault} className={drafting.fault}>
              {fault}
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

function Reads({ row: { limit, paragraph, purpose, validFrom, validUntil, conditions } }: { row: RowDraft }) {
  const say = useSay('own-limits');
  const { sayCondition } = useLimits();
  const sayPurpose = useSay('limit-purposes');
  const period = validUntil ? say('counts-between', { from: validFrom, until: validUntil }) : say('counts-since', { from: validFrom });
  return (
    <div>
      {limit ? <LimitView limit={limit} /> : <p>{say('figures-unwritten')}</p>}
      <p className={css.small}>{[purpose && sayPurpose(codeOf('purpose', purpose)), paragraph, period].filter(Boolean).join(' · ')}</p>
      {conditions.length > 0 && <p className={css.small}>{say('only', { conditions: conditions.map(sayCondition).join('; ') })}</p>}
    </div>
  );
}
