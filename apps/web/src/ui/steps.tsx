import css from './steps.module.css';

export type StepState = 'done' | 'now' | 'to come';
type StepsProps = { label: string; steps: { name: string; state: StepState; note?: string }[] };

const said: Record<StepState, string> = { done: 'done', now: 'now', 'to come': 'to come' };

/** The steps of a flow diagram or a form, in order, with where we are. */
export function Steps({ label, steps }: StepsProps) {
  return (
    <ol className={css.steps} aria-label={label}>
      {steps.map(({ name, state, note }, i) => (
        <li key={name} className={css.step} data-state={state} aria-current={state === 'now' ? 'step' : undefined}>
          <span className={css.number} aria-hidden="true">
            {state === 'done' ? '✓' : i + 1}
          </span>
          <span>
            <span className={css.name}>{name}</span>
            <span className={css.note}>{note ?? said[state]}</span>
          </span>
        </li>
      ))}
    </ol>
  );
}
