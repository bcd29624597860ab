import type { Correction } from '@larderbook/contracts';
import { Moment } from './moment';
import css from './notes.module.css';
import { useSay } from './voice';

export function CorrectedList({ corrections, zone }: { corrections: readonly Correction[]; zone: string }) {
  const say = useSay('recording');
  return (
    <ul className={css.notes}>
      {corrections.map(({ correctionId, voided, reason, made, changes }) => (
        <li key={correctionId}>
          {say(voided ? 'voided-by' : 'corrected-by', { who: made.name, when: { at: Date.parse(made.recordedAt) }, reason })}
          {changes.map((change) => (
            <Change key={change.what} change={change} zone={zone} />
          ))}
        </li>
      ))}
    </ul>
  );
}

function Change({ change: { what, before, after, isMoment }, zone }: { change: Correction['changes'][number]; zone: string }) {
  const say = useSay('recording');
  const shown = (text: string) => (isMoment ? <Moment at={text} zone={zone} /> : text);
  return (
    <div>
      {what}: <s>{before === '' ? say('nothing') : shown(before)}</s>
      {after !== '' && <> → {shown(after)}</>}
    </div>
  );
}
