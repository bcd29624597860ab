import { useId } from 'react';
import css from './keypad.module.css';
import type { Key, Writing } from './keypad-text';
import type { UnitChoice } from './plausible';
import { useSay } from './voice';
import { useTapGuard } from './use-tap-guard';

type KeypadKeysProps = {
  units: UnitChoice[];
  unit: string;
  writing: Writing;
  onKey: (key: Key) => void;
  onUnit: (unit: string) => void;
};

const figures: Key[] = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

/** Each key is at least 56 px. */
export function KeypadKeys({ units, unit, writing, onKey, onUnit }: KeypadKeysProps) {
  const say = useSay('recording');
  const name = useId();
  return (
    <>
      {units.length > 1 && (
        <fieldset className={css.units}>
          <legend className={css.unseen}>{say('unit')}</legend>
          {units.map((choice) => (
            <label key={choice.unit} className={css.unitKey}>
              <input type="radio" name={name} checked={choice.unit === unit} onChange={() => onUnit(choice.unit)} />
              {choice.unit}
            </label>
          ))}
        </fieldset>
      )}
      <div className={css.keys}>
        {figures.map((key) => (
          <KeypadKey key={key} press={key} onKey={onKey} />
        ))}
        {writing.belowZero && <KeypadKey press="-" shown="−" name={say('minus')} onKey={onKey} />}
        <KeypadKey press="0" onKey={onKey} />
        {writing.decimals > 0 && <KeypadKey press="." shown="." name={say('decimal-point')} onKey={onKey} />}
        <KeypadKey press="back" shown="⌫" name={say('delete-last')} onKey={onKey} />
        <KeypadKey press="clear" shown={say('clear')} onKey={onKey} />
      </div>
    </>
  );
}

/** A ghost tap comes within a tenth of a second; the second 5 of "155" does not. */
const ghostKeyMs = 100;

type KeypadKeyProps = { press: Key; shown?: string; name?: string; onKey: (key: Key) => void };

function KeypadKey({ press, shown, name, onKey }: KeypadKeyProps) {
  const guarded = useTapGuard(() => onKey(press), ghostKeyMs);
  return (
    <button type="button" className={css.key} data-key={press} aria-label={name} onClick={guarded}>
      {shown ?? press}
    </button>
  );
}
