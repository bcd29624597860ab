import { useId, useRef, type FormEvent, type ReactNode } from 'react';
import { Button } from './button';
import { KeypadBeside } from './keypad-beside';
import { KeypadDisplay } from './keypad-display';
import css from './keypad.module.css';
import { KeypadKeys } from './keypad-keys';
import { KeypadQuestion } from './keypad-question';
import { useKeypad, type Entering } from './use-keypad';
import { useSay } from './voice';

/** The text as typed, so that "71.80" stays "71.80". */
export type Entered = { text: string; unit: string };

/** `sure`: the value is unusual here, and the person said it is right. */
export type KeptNumber = Entered & { value: number; sure: boolean };

type KeypadProps = Entering & {
  label: string;
  saveLabel?: string;
  busy?: boolean;
  previous?: ReactNode;
  limit?: ReactNode;
  /** How the value on the display would be judged. */
  preview?: ReactNode;
  error?: string;
};

/** The previous value, the limit and the usual range stand beside the number. */
export function Keypad(props: KeypadProps) {
  const { label, units, entered, saveLabel, busy = false } = props;
  const say = useSay('recording');
  const sayShared = useSay('shared');
  const beside = useId();
  const display = useRef<HTMLInputElement>(null);
  const keypad = useKeypad(props, () => display.current?.focus());
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (!busy) keypad.save(false);
  };
  return (
    <form className={css.keypad} onSubmit={submit} noValidate>
      <div className={css.reading}>
        <KeypadDisplay
          label={label}
          entered={entered}
          error={keypad.isMissing ? say('enter-number') : (props.impossible ?? props.error)}
          describedBy={beside}
          ref={display}
          onType={keypad.type}
          onMinus={() => keypad.pressKey('-')}
        />
        <div className={css.preview} role="status">
          {keypad.value !== undefined && props.preview}
        </div>
        <KeypadBeside id={beside} limit={props.limit} previous={props.previous} usual={units.find(({ unit }) => unit === entered.unit)} />
      </div>
      <div className={css.hands}>
        {keypad.question ? (
          <KeypadQuestion
            entered={entered}
            question={keypad.question}
            onSure={() => keypad.save(true)}
            onMeant={keypad.typeAnew}
            onNeither={() => keypad.typeAnew({ value: '', unit: entered.unit })}
          />
        ) : (
          <>
            <KeypadKeys units={units} unit={entered.unit} writing={keypad.writing} onKey={keypad.pressKey} onUnit={keypad.changeUnit} />
            <Button type="submit" look="primary" wide busy={busy}>
              {saveLabel ?? sayShared('save')}
            </Button>
          </>
        )}
      </div>
    </form>
  );
}
