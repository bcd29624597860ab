import type { Correction, Said } from '@larderbook/contracts';
import { canonicalJson } from '@larderbook/haccp';
import { Moment } from './moment';
import css from './notes.module.css';
import { useSaid } from './use-said';
import { useSay } from './voice';

export function CorrectedList({ corrections, zone }: { corrections: readonly Correction[]; zone: string }) {
  const say = useSay('recording');
  const tell = useSaid();
  return (
    <ul className={css.notes}>
      {corrections.map(({ correctionId, voided, reason, made, changes }) => (
        <li key={correctionId}>
          {say(voided ? 'voided-by' : 'corrected-by', { who: made.name, when: { at: Date.parse(made.recordedAt) }, reason: tell(reason) })}
          {changes.map((change) => (
            <Change key={canonicalJson(change.what)} change={change} zone={zone} />
          ))}
        </li>
      ))}
    </ul>
  );
}

function Change({ change: { what, before, after }, zone }: { change: Correction['changes'][number]; zone: string }) {
  const say = useSay('recording');
  const tell = useSaid();
  const shown = (said: Said) => (typeof said === 'object' && 'at' in said ? <Moment at={said.at} zone={zone} /> : tell(said));
  return (
    <div>
      {tell(what)}: <s>{before === undefined ? say('nothing') : shown(before)}</s>
      {after !== undefined && <> → {shown(after)}</>}
    </div>
  );
}
