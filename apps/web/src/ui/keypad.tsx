import { useId, useRef, useState, type CSSProperties, type FormEvent, type ReactNode } from 'react';
import { announce } from './announcer';
import { Button } from './button';
import { FaultWords } from './fault-words';
import css from './keypad.module.css';
import { KeypadKeys } from './keypad-keys';
import { KeypadQuestion } from './keypad-question';
import { type Key, numberOf, press, tidy } from './keypad-text';
import { askByRange, type NumberQuestion, type UnitChoice } from './plausible';
import { useFigures, useSay } from './voice';

/** What stands on the display: the text as typed, so that "71.80" stays "71.80", and its unit. */
export type Entered = { text: string; unit: string };

/** What the person wants kept. `sure`: the value is unusual here, and the person said it is right all the same. */
export type KeptNumber = Entered & { value: number; sure: boolean };

type KeypadProps = {
  label: string;
  /** One unit, or several to switch between; each with what is usual in it. */
  units: UnitChoice[];
  entered: Entered;
  onChange: (entered: Entered) => void;
  onSave: (kept: KeptNumber) => void;
  saveLabel?: string;
  busy?: boolean;
  belowZero?: boolean;
  previous?: ReactNode;
  limit?: ReactNode;
  /** How the value on the display would be judged: a Status and a sentence. */
  preview?: ReactNode;
  error?: string;
  /** What else is odd about a number that is usual in its unit, by what was read before it or by its target. */
  ask?: (value: number, unit: string) => NumberQuestion | undefined;
  /** Why the value on the display is impossible, not merely unusual: said beside it, and it is not kept. */
  impossible?: string;
};

/** The on-screen keypad: one number, large, with the previous value, the limit and the usual range beside it. */
export function Keypad(props: KeypadProps) {
  const { label, units, entered, onChange, onSave, saveLabel, busy = false, belowZero = false } = props;
  const say = useSay('recording');
  const sayShared = useSay('shared');
  const { number } = useFigures();
  const [asked, setAsked] = useState<Entered & { question: NumberQuestion }>();
  const [missing, setMissing] = useState(false);
  const id = useId();
  const display = useRef<HTMLInputElement>(null);
  const own = units.find((choice) => choice.unit === entered.unit);
  const writing = { decimals: own?.decimals ?? 0, belowZero };
  const value = numberOf(entered.text);
  const asks = asked?.text === entered.text && asked.unit === entered.unit ? asked : undefined;
  const error = missing && value === undefined ? say('enter-number') : (props.impossible ?? props.error);

  const show = (next: Entered) => {
    setMissing(false);
    onChange(next);
  };
  const pressKey = (key: Key) => {
    const text = press(entered.text, key, writing);
    announce(text ? `${text} ${entered.unit}` : say('empty', { unit: entered.unit }), { unseen: true });
    show({ ...entered, text });
  };
  const typeAnew = ({ value: figures, unit }: { value: number | ''; unit: string }) => {
    show({ text: String(figures), unit });
    display.current?.focus();
  };
  const save = (sure: boolean) => {
    if (value === undefined) return setMissing(true);
    if (props.impossible) return display.current?.focus();
    const { unit } = entered;
    const question = sure ? undefined : (props.ask?.(value, unit) ?? askByRange(value, unit, units, say));
    if (question) return setAsked({ ...entered, question });
    onSave({ ...entered, value, sure });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!busy) save(false);
  };

  return (
    <form className={css.keypad} onSubmit={submit} noValidate>
      <div className={css.reading}>
        <label className={css.label} htmlFor={id}>
          {label}
        </label>
        <div className={css.display} style={lengthsOf(entered)}>
          {/* The device's own keyboard stays away; a real one types straight in. */}
          <input
            id={id}
            ref={display}
            className={css.value}
            inputMode="none"
            autoComplete="off"
            placeholder="–"
            value={entered.text}
            aria-invalid={error ? true : undefined}
            aria-describedby={`${id}-beside`}
            onKeyDown={(event) => {
              if (event.key !== '-') return;
              event.preventDefault();
              pressKey('-');
            }}
            onChange={(event) => show({ ...entered, text: tidy(event.target.value, entered.text, writing) })}
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
        <div className={css.preview} role="status">
          {value !== undefined && props.preview}
        </div>
        <dl className={css.beside} id={`${id}-beside`}>
          {props.limit && (
            <div>
              <dt>{sayShared('limit')}</dt>
              <dd>{props.limit}</dd>
            </div>
          )}
          {props.previous && (
            <div>
              <dt>{say('before')}</dt>
              <dd>{props.previous}</dd>
            </div>
          )}
          {own && (
            <div>
              <dt>{say('usual')}</dt>
              <dd>{say('usual-range', { least: number(own.least), most: number(own.most), unit: own.unit })}</dd>
            </div>
          )}
        </dl>
      </div>
      <div className={css.hands}>
        {asks ? (
          <KeypadQuestion
            entered={entered}
            question={asks.question}
            onSure={() => save(true)}
            onMeant={typeAnew}
            onNeither={() => typeAnew({ value: '', unit: entered.unit })}
          />
        ) : (
          <>
            <KeypadKeys
              units={units}
              unit={entered.unit}
              writing={writing}
              onKey={pressKey}
              onUnit={(unit) => show({ unit, text: tidy(entered.text, '', { ...writing, decimals: decimalsOf(units, unit) }) })}
            />
            <Button type="submit" look="primary" wide busy={busy}>
              {saveLabel ?? sayShared('save')}
            </Button>
          </>
        )}
      </div>
    </form>
  );
}

/** How many figures and letters have to find room on the display. */
const lengthsOf = ({ text, unit }: Entered) =>
  ({
    '--figures': Math.max(text.length, 3),
    '--letters': isWord(unit) ? unit.length * SMALLER : Math.max(unit.length, 2),
  }) as CSSProperties;

/** A unit that is a word ("packages") stands in the size of the text and leaves the display to the number. */
const isWord = (unit: string) => unit.length > 3;
/** The text's size against that of a unit: `--size-text` over `--size-title-2`. */
const SMALLER = 0.6;

const decimalsOf = (units: UnitChoice[], unit: string) => units.find((choice) => choice.unit === unit)?.decimals ?? 0;
