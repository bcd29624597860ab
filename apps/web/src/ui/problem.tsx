import type { ReactNode } from 'react';
import { Button } from './button';
import css from './problem.module.css';
import { readProblem } from './read-problem';
import { useSay } from './voice';

type ProblemProps = {
  /** Whatever was thrown: an RFC 9457 problem, an error of the network, anything. */
  error: unknown;
  onRetry?: () => void;
  children?: ReactNode;
};

/** Tells what a person can do about it. */
export function Problem({ error, onRetry, children }: ProblemProps) {
  const say = useSay('shared');
  const { title, detail, fields } = readProblem(error, say);
  return (
    <div className={css.problem} role="alert">
      <p className={css.title}>{title}</p>
      {detail && <p>{detail}</p>}
      {fields.length > 0 && (
        <ul className={css.fields}>
          {fields.map((field) => (
            <li key={field}>{field}</li>
          ))}
        </ul>
      )}
      {children}
      {onRetry && <Button onClick={onRetry}>{say('try-again')}</Button>}
    </div>
  );
}
