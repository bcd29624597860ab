import { useTapGuard } from '../../../ui/use-tap-guard';
import css from './recording.module.css';

/** One of several things to choose from with a gloved finger, in a list. */
export function BigTile({ title, lines, onPress }: { title: string; lines: string[]; onPress: () => void }) {
  const press = useTapGuard<HTMLButtonElement>(onPress);
  return (
    <li>
      <button type="button" className={css.choice} onClick={press}>
        <strong>{title}</strong>
        {lines.filter(Boolean).map((line) => <small key={line}>{line}</small>)}
      </button>
    </li>
  );
}
