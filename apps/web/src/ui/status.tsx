import type { ReactNode } from 'react';
import css from './status.module.css';
import { useSay } from './voice';

/** `running` is a stage whose time is not yet spent; it clears nothing. */
export type State = 'met' | 'missed' | 'undetermined' | 'running';

type StatusProps = {
  state: State;
  /** As in "8.5 °F short", "12 min to spare". */
  margin?: ReactNode;
  /** Replaces the verdict's own word, as in "On hold". */
  word?: string;
  /** Missed, but the stage goes on. */
  still?: 'cooling';
  size?: 'line' | 'large';
};

/** A word and a shape of its own; colour says nothing the shape does not. */
export function Status({ state, margin, word, still, size = 'line' }: StatusProps) {
  const say = useSay('shared');
  return (
    <span className={`${css.status} ${css[size]}`} data-state={state}>
      <StateMark state={state} />
      <span className={css.words}>
        <strong className={css.word}>{word ?? say(still ? `missed-still-${still}` : state)}</strong>
        {margin && <span className={css.margin}>, {margin}</span>}
      </span>
    </span>
  );
}

/** For where the word stands beside it. */
export function StateMark({ state }: { state: State }) {
  return (
    <svg className={css.mark} viewBox="0 0 24 24" aria-hidden="true">
      {shape[state]}
    </svg>
  );
}

/** Met: a disc. Missed: a block whose rule is broken. Undetermined: an open diamond. Running: an hour filling. */
const shape: Record<State, ReactNode> = {
  met: (
    <>
      <circle cx="12" cy="12" r="11" fill="currentColor" />
      <path d="M6.5 12.5l4 4 7-8.5" fill="none" stroke="var(--sheet)" strokeWidth="2.6" />
    </>
  ),
  missed: (
    <>
      <path d="M1 1h22v22H1z" fill="currentColor" />
      <path d="M4 9h7M13 15h7" fill="none" stroke="var(--sheet)" strokeWidth="3" />
      <path d="M13.5 5.5l-3 13" fill="none" stroke="var(--sheet)" strokeWidth="1.6" />
    </>
  ),
  undetermined: (
    <>
      <path d="M12 1.5L22.5 12 12 22.5 1.5 12z" fill="none" stroke="currentColor" strokeWidth="2" strokeDasharray="4 2.2" />
      <path d="M9.6 10a2.5 2.5 0 1 1 3.6 2.2c-.9.5-1.2.9-1.2 1.9M12 16.2v1.6" fill="none" stroke="currentColor" strokeWidth="1.9" />
    </>
  ),
  running: (
    <>
      <circle cx="12" cy="12" r="10" fill="none" stroke="currentColor" strokeWidth="2" />
      <path d="M12 12V2a10 10 0 0 1 7 17z" fill="currentColor" />
    </>
  ),
};
