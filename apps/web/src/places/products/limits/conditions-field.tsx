import type { LimitCondition } from '@larderbook/haccp';
import { Button } from '../../../ui/button';
import { useLimits } from '../../../ui/use-tell';
import css from './limits.module.css';
import { useSay } from '../../../ui/voice';

type ConditionsFieldProps = { conditions: LimitCondition[]; onChange: (conditions: LimitCondition[]) => void };

/** The conditions came with the figures, and go only with another source. */
export function ConditionsField({ conditions, onChange }: ConditionsFieldProps) {
  const say = useSay('limit-forms');
  const { sayCondition } = useLimits();
  if (conditions.length === 0) return null;
  return (
    <fieldset className={css.group}>
      <legend className={css.legend}>{say('only-with')}</legend>
      <ol className={css.rows}>
        {conditions.map((condition, i) => (
          <li key={i} className={css.row}>
            <div className={css.rowHead}>
              <p>{sayCondition(condition)}</p>
              <Button
                look="quiet"
                aria-label={say('take-condition-out', { number: i + 1 })}
                onClick={() => onChange(conditions.toSpliced(i, 1))}
              >
                {say('take-out')}
              </Button>
            </div>
          </li>
        ))}
      </ol>
      <p className={css.hint}>{say('belong-to-source')}</p>
    </fieldset>
  );
}
