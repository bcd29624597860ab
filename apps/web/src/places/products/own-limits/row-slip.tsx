import { sayCondition } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { Row } from '../../../ui/stack';
import { LimitView } from '../document/limit-view';
import drafting from '../drafting/drafting.module.css';
import type { RowDraft } from './own-draft';
import css from './own-limits.module.css';
import { RowFields } from './row-fields';

type RowSlipProps = {
  row: RowDraft;
  /** "Figure 3", where it has no title yet. */
  number: number;
  errors: FieldErrors;
  faults: string[];
  isOpen: boolean;
  onOpen: (isOpen: boolean) => void;
  onChange: (row: RowDraft) => void;
  onRemove: () => void;
};

/** One figure on its own slip: as it reads, or open to be written. What is wrong with it stands on it. */
export function RowSlip({ row, number, errors, faults, isOpen, onOpen, onChange, onRemove }: RowSlipProps) {
  const title = row.title || `Figure ${number}, without a title`;
  const missing = Object.keys(errors).length;
  const turn = isOpen ? 'Close' : 'Change';
  return (
    <li className={drafting.slip}>
      <div className={drafting.slipHead}>
        <h3>{title}</h3>
        <Row>
          <Button aria-expanded={isOpen} aria-label={`${turn} ${title}`} onClick={() => onOpen(!isOpen)}>
            {turn}
          </Button>
          <Button look="quiet" aria-label={`Take ${title} out`} onClick={onRemove}>
            Take it out
          </Button>
        </Row>
      </div>
      {isOpen ? <RowFields row={row} errors={errors} onChange={onChange} /> : <Reads row={row} />}
      {(faults.length > 0 || (missing > 0 && !isOpen)) && (
        <ul className={css.faults} role="alert">
          {missing > 0 && !isOpen && <li className={drafting.fault}>Something is missing; open it to see.</li>}
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
  const period = validUntil ? `from ${validFrom} until ${validUntil}` : `from ${validFrom}`;
  return (
    <div>
      {limit ? <LimitView limit={limit} /> : <p>Its figures are not written yet.</p>}
      <p className={css.small}>{[purpose, paragraph, `counts ${period}`].filter(Boolean).join(' · ')}</p>
      {conditions.length > 0 && <p className={css.small}>Only {conditions.map(sayCondition).join('; ')}</p>}
    </div>
  );
}
