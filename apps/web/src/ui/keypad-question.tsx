import { useEffect, useRef } from 'react';
import { Button } from './button';
import css from './keypad.module.css';
import type { Entered } from './keypad';
import type { MeantInstead, NumberQuestion } from './plausible';
import { useSay } from './voice';

type KeypadQuestionProps = {
  entered: Entered;
  question: NumberQuestion;
  onMeant: (meant: MeantInstead) => void;
  onSure: () => void;
  onNeither: () => void;
};

/** Asks in the place of the keys, so that every answer is in sight; never refuses the value, never swallows it. */
export function KeypadQuestion({ entered, question: { because, meant }, onMeant, onSure, onNeither }: KeypadQuestionProps) {
  const asked = useRef<HTMLDivElement>(null);
  useEffect(() => asked.current?.focus(), []); // it replaces the button that had the focus
  const say = useSay('recording');
  const own = `${entered.text} ${entered.unit}`;
  return (
    <div className={css.question} role="alert" tabIndex={-1} ref={asked}>
      <p>
        <strong>{say('unusual-here', { entered: own })}</strong> {because} {say('which-is-right')}
      </p>
      {meant.map((each) => (
        <Button key={`${each.value} ${each.unit}`} wide onClick={() => onMeant(each)}>
          {say('it-was', { value: `${each.value} ${each.unit}` })}
        </Button>
      ))}
      <Button wide onClick={onSure}>
        {say('is-right', { entered: own })}
      </Button>
      <Button wide onClick={onNeither}>
        {say('type-again')}
      </Button>
    </div>
  );
}
