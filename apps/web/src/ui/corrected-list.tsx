import type { Correction } from '@larderbook/contracts';
import { Moment } from './moment';
import css from './notes.module.css';

/** What was corrected or voided: the old value struck through, what it is now, who, when and why. Oldest first. */
export function CorrectedList({ corrections, zone }: { corrections: readonly Correction[]; zone: string }) {
  return (
    <ul className={css.notes}>
      {corrections.map(({ correctionId, voided, reason, made, changes }) => (
        <li key={correctionId}>
          {voided ? 'Voided' : 'Corrected'} by {made.name}, <Moment at={made.recordedAt} zone={zone} />: {reason}
          {changes.map((change) => (
            <Change key={change.what} change={change} zone={zone} />
          ))}
        </li>
      ))}
    </ul>
  );
}

function Change({ change: { what, before, after, isMoment }, zone }: { change: Correction['changes'][number]; zone: string }) {
  const say = (text: string) => (isMoment ? <Moment at={text} zone={zone} /> : text);
  return (
    <div>
      {what}: <s>{before === '' ? 'nothing' : say(before)}</s>
      {after !== '' && <> → {say(after)}</>}
    </div>
  );
}
