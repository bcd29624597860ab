import { useState } from 'react';
import { announce } from './announcer';
import type { Entered, KeptNumber } from './keypad';
import { type Key, numberOf, press, tidy, type Writing } from './keypad-text';
import { askByRange, type NumberQuestion, type UnitChoice } from './plausible';
import { useSay } from './voice';

export type Entering = {
  units: UnitChoice[];
  entered: Entered;
  onChange: (entered: Entered) => void;
  onSave: (kept: KeptNumber) => void;
  belowZero?: boolean;
  /** Asks about what is odd by earlier readings or the target, though usual in its unit. */
  ask?: (value: number, unit: string) => NumberQuestion | undefined;
  /** Why the value is impossible, not merely unusual: it is not kept. */
  impossible?: string;
};

export function useKeypad({ units, entered, onChange, onSave, belowZero = false, ask, impossible }: Entering, toDisplay: () => void) {
  const say = useSay('recording');
  const [asked, setAsked] = useState<Entered & { question: NumberQuestion }>();
  const [isMissing, setMissing] = useState(false);
  const value = numberOf(entered.text);
  const writingIn = (unit: string): Writing => ({ decimals: units.find((each) => each.unit === unit)?.decimals ?? 0, belowZero });
  const writing = writingIn(entered.unit);

  const show = (next: Entered) => {
    setMissing(false);
    onChange(next);
  };
  const pressKey = (key: Key) => {
    const text = press(entered.text, key, writing);
    announce(text ? `${text} ${entered.unit}` : say('empty', { unit: entered.unit }), { unseen: true, about: 'display' });
    show({ ...entered, text });
  };
  const typeAnew = ({ value: figures, unit }: { value: number | ''; unit: string }) => {
    show({ text: String(figures), unit });
    toDisplay();
  };
  const save = (sure: boolean) => {
    if (value === undefined) return setMissing(true);
    if (impossible) return toDisplay();
    const { unit } = entered;
    const question = sure ? undefined : (ask?.(value, unit) ?? askByRange(value, unit, units, say));
    if (question) return setAsked({ ...entered, question });
    onSave({ ...entered, value, sure });
  };
  return {
    value,
    writing,
    /** A save was tried without a number. */
    isMissing: isMissing && value === undefined,
    question: asked?.text === entered.text && asked.unit === entered.unit ? asked.question : undefined,
    pressKey,
    type: (text: string) => show({ ...entered, text: tidy(text, entered.text, writing) }),
    changeUnit: (unit: string) => show({ unit, text: tidy(entered.text, '', writingIn(unit)) }),
    typeAnew,
    save,
  };
}
