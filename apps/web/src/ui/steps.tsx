import css from './steps.module.css';
import { useSay } from './voice';

export type StepState = 'done' | 'now' | 'to come';
type StepsProps = { label: string; steps: { name: string; state: StepState; note?: string }[] };

const codes = { done: 'step-done', now: 'step-now', 'to come': 'step-to-come' } as const satisfies Record<StepState, string>;

export function Steps({ label, steps }: StepsProps) {
  const say = useSay('shared');
  return (
    <ol className={css.steps} aria-label={label}>
      {steps.map(({ name, state, note }, i) => (
        <li key={name} className={css.step} data-state={state} aria-current={state === 'now' ? 'step' : undefined}>
          <span className={css.number} aria-hidden="true">
            {state === 'done' ? '✓' : i + 1}
          </span>
          <span>
            <span className={css.name}>{name}</span>
            <span className={css.note}>{note ?? say(codes[state])}</span>
          </span>
        </li>
      ))}
    </ol>
  );
}
