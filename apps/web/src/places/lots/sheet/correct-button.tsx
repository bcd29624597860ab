import { useTapGuard } from '../../../ui/use-tap-guard';
import { useSay } from '../../../ui/voice';
import css from './entry-view.module.css';
import type { SheetLine } from './sheet-line';

/** The touch target is 48 px, larger than the drawing. */
export function CorrectButton({ line, onCorrect }: { line: SheetLine; onCorrect: (line: SheetLine) => void }) {
  const say = useSay('day-sheet');
  const press = useTapGuard<HTMLButtonElement>(() => onCorrect(line));
  return (
    <button
      type="button"
      className={css.correct}
      aria-label={say('correct-what', { what: `${line.what} ${line.value ?? ''}`.trim() })}
      onClick={press}
    >
      <svg viewBox="0 0 24 24" aria-hidden="true">
        <path d="M4 20l1-5L16 4l4 4L9 19zM14 6l4 4" fill="none" stroke="currentColor" strokeWidth="1.8" />
      </svg>
    </button>
  );
}
