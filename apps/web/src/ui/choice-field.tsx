import { useId, type ReactNode } from 'react';
import css from './choice-field.module.css';
import fieldCss from './field.module.css';
import type { FieldFrame } from './field';
import { FaultWords } from './fault-words';
import { useSay } from './voice';

export type Tile<V extends string = string> = { value: V; name: string; detail?: ReactNode };

type ChoiceFieldProps<V extends string> = FieldFrame & {
  choices: Tile<V>[];
  value: V | undefined;
  onChange: (value: V) => void;
};

/** For a few choices, as tiles of at least 56 px. */
export function ChoiceField<V extends string>(props: ChoiceFieldProps<V>) {
  const { label, hint, error, optional, choices, value, onChange } = props;
  const say = useSay('shared');
  const id = useId();
  const described = [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ');
  return (
    <fieldset className={css.field} aria-describedby={described || undefined} data-wrong={error ? true : undefined}>
      <legend className={fieldCss.label}>
        {label}
        {optional && <span className={fieldCss.optional}> {say('optional')}</span>}
      </legend>
      {hint && (
        <div className={fieldCss.hint} id={`${id}-hint`}>
          {hint}
        </div>
      )}
      <div className={css.tiles}>
        {choices.map((tile) => (
          <label key={tile.value} className={css.tile}>
            <input
              type="radio"
              name={id}
              value={tile.value}
              className={css.radio}
              checked={tile.value === value}
              onChange={() => onChange(tile.value)}
            />
            <span className={css.mark} aria-hidden="true" />
            <span>
              <span className={css.name}>{tile.name}</span>
              {tile.detail && <span className={css.detail}>{tile.detail}</span>}
            </span>
          </label>
        ))}
      </div>
      {error && (
        <p className={fieldCss.error} id={`${id}-error`} role="alert">
          <FaultWords said={error} />
        </p>
      )}
    </fieldset>
  );
}
