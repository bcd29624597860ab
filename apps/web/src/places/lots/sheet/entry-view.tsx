import type { Told } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { useEntered, Moment } from '../../../ui/moment';
import { Status } from '../../../ui/status';
import { statusOf } from '../../../ui/status-of';
import { useTell } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { probeName } from '../say/entered';
import { CorrectButton } from './correct-button';
import { DeviationUnder } from './deviation-under';
import css from './entry-view.module.css';
import type { Correction, LineKind, SheetLine } from './sheet-line';

type EntryViewProps = {
  line: SheetLine;
  /** The next probe of one round: what it shares with the line above is not said again. */
  continues?: boolean;
  onCorrect?: (line: SheetLine) => void;
};

export function EntryView({ line, continues = false, onCorrect }: EntryViewProps) {
  const shown = line.judged.filter(({ verdict }) => !(line.deviation && verdict.kind === 'missed'));
  const { tell } = useTell();
  const say = useSay('day-sheet');
  const sayEntry = useSay('entries');
  const entered = useEntered({ at: line.at, recordedAt: line.enteredAt ?? line.at });
  const smallPrint = continues ? [] : [line.who, ...line.notes].filter(Boolean);
  return (
    <>
      <div className={css.line} data-kept={line.kept ? true : undefined} data-continues={continues || undefined}>
        <span className={css.name}>{continues ? probeName(line.probe ?? '', sayEntry) : line.what}</span>
        <div className={css.value}>
          {line.corrects.map(({ id, value }) => value && <s key={id}>{value}</s>)}
          {line.value && (line.isLeftOut || line.voided ? <s>{line.value}</s> : <span>{line.value}</span>)}
        </div>
        <div className={css.verdict}>
          {!line.voided &&
            shown.map(({ limitId, limit, verdict }) => (
              <ShortVerdict key={limitId} told={tell(verdict, limit)} isOneOfMany={shown.length > 1} />
            ))}
        </div>
        <div className={css.small}>
          {smallPrint.length > 0 && <span className={css.note}>{smallPrint.join(' · ')}</span>}
          {entered && <span className={css.note}>{entered}</span>}
          {line.voided && <span className={css.correction}>{say('voided-by', line.voided)}</span>}
          {line.flags.length > 0 && !continues && <span className={css.flag}>{line.flags.map((flag) => sayEntry(flag)).join(' · ')}</span>}
          {line.said?.map((said, index) => (
            <span key={index} className={css.flag}>
              {said}
            </span>
          ))}
          {line.corrects.map((correction) => (
            <Corrected key={correction.id} correction={correction} />
          ))}
          {line.kept && <span className={css.flag}>{line.kept.refused ?? say('not-sent')}</span>}
        </div>
        {onCorrect && isCorrectable(line) && <CorrectButton line={line} onCorrect={onCorrect} />}
      </div>
      {line.deviation && <DeviationUnder what={line.what} deviation={line.deviation} />}
    </>
  );
}

/** Without a margin: what is due, or which of several values it is. */
function ShortVerdict({ told, isOneOfMany }: { told: Told; isOneOfMany: boolean }) {
  const { margin, running, measured } = told;
  return <Status {...statusOf(told)} margin={margin ?? running?.bound ?? (isOneOfMany ? measured : undefined)} />;
}

function Corrected({ correction: { what, value, moment, who, reason, at } }: { correction: Correction }) {
  const say = useSay('day-sheet');
  const { zone } = useShop();
  return (
    <span className={css.correction}>
      {moment === undefined ? say('was') : what.toLowerCase()} <s>{moment ? <Moment at={moment} zone={zone} /> : value}</s>,{' '}
      {say('was-by', { who, when: { at }, reason })}
    </span>
  );
}

const correctable: readonly LineKind[] = ['input', 'weighing', 'reading', 'stage end', 'packing', 'removal'];
const isCorrectable = ({ kind, kept, voided }: SheetLine): boolean => !kept && !voided && correctable.includes(kind);
