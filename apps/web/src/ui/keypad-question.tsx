import { useEffect, useRef } from 'react';
import { Button } from './button';
import css from './keypad.module.css';
import type { Entered } from './keypad';
import type { MeantInstead, UnitChoice } from './plausible';

type KeypadQuestionProps = {
  entered: Entered;
  usual: UnitChoice | undefined;
  meant: MeantInstead[];
  onMeant: (meant: MeantInstead) => void;
  onSure: () => void;
};

/** Asks about a value outside what is usual: never refuses it, never swallows it. */
export function KeypadQuestion({ entered, usual, meant, onMeant, onSure }: KeypadQuestionProps) {
  const question = useRef<HTMLDivElement>(null);
  useEffect(() => question.current?.focus(), []); // it stands where the button was that had the focus
  const own = `${entered.text} ${entered.unit}`;
  return (
    <div className={css.question} role="alert" tabIndex={-1} ref={question}>
      <p>
        <strong>{own} is unusual here.</strong>
        {usual && ` Usual is ${usual.least} to ${usual.most} ${usual.unit}. Which is right?`}
      </p>
      {meant.map((each) => (
        <Button key={`${each.value} ${each.unit}`} wide onClick={() => onMeant(each)}>
          It was {each.value} {each.unit}
        </Button>
      ))}
      <Button wide onClick={onSure}>{own} is right, keep it</Button>
    </div>
  );
}
