import { useId, type CSSProperties, type Ref } from 'react';
import { FaultWords } from './fault-words';
import type { Entered } from './keypad';
import css from './keypad.module.css';

type KeypadDisplayProps = {
  label: string;
  entered: Entered;
  error?: string;
  /** The element that says what is allowed, usual and was there before. */
  describedBy: string;
  ref: Ref<HTMLInputElement>;
  onType: (text: string) => void;
  onMinus: () => void;
};

export function KeypadDisplay({ label, entered, error, describedBy, ref, onType, onMinus }: KeypadDisplayProps) {
  const id = useId();
  return (
    <>
      <label className={css.label} htmlFor={id}>
        {label}
      </label>
      <div className={css.display} style={lengthsOf(entered)}>
        {/* The device's own keyboard stays away; a real one types straight in. */}
        <input
          id={id}
          ref={ref}
          className={css.value}
          inputMode="none"
          autoComplete="off"
          placeholder="–"
          value={entered.text}
          aria-invalid={error ? true : undefined}
          aria-describedby={describedBy}
          onKeyDown={(event) => {
            if (event.key !== '-') return;
            event.preventDefault();
            onMinus();
          }}
          onChange={(event) => onType(event.target.value)}
        />
        <span className={css.unit} data-word={isWord(entered.unit) || undefined}>
          {entered.unit}
        </span>
      </div>
      {error && (
        <p className={css.error} role="alert">
          <FaultWords said={error} />
        </p>
      )}
    </>
  );
}

const lengthsOf = ({ text, unit }: Entered) =>
  ({
    '--figures': Math.max(text.length, 3),
    '--letters': isWord(unit) ? unit.length * SMALLER : Math.max(unit.length, 2),
  }) as CSSProperties;

/** A unit that is a word ("packages") is set smaller and leaves the display to the number. */
const isWord = (unit: string) => unit.length > 3;
/** `--size-text` over `--size-title-2`. */
const SMALLER = 0.6;
