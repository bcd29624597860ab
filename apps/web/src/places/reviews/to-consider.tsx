import type { Finding, Lot } from '@larderbook/contracts';
import type { Clock, SayOf } from '@larderbook/messages';
import { LinkButton } from '../../ui/link-button';
import { StateMark } from '../../ui/status';
import { Stack } from '../../ui/stack';
import { Table } from '../../ui/table';
import { useClock, useSay } from '../../ui/voice';
import { oddEntries, useOddVoice, type OddEntry } from './odd-entries';
import css from './review.module.css';
import { useFindings } from './use-findings';

/** These are no obstacle, but for the reviewer to judge. */
export function ToConsider({ lot, findings }: { lot: Lot; findings: Finding[] }) {
  const say = useSay('reviews');
  const tell = useFindings();
  const voice = useOddVoice();
  const clock = useClock();
  const remarks = findings.filter(isRemark);
  const odd = oddEntries(lot, voice);
  if (remarks.length === 0 && odd.length === 0)
    return (
      <p className={css.clear}>
        <StateMark state="met" /> {say('nothing-to-consider')}
      </p>
    );
  return (
    <Stack>
      {remarks.length > 0 && (
        <ul className={css.list}>
          {remarks.map(({ what, next, deviationId }) => (
            <li key={tell(what)} className={css.remark}>
              <div>
                <p className={css.what}>{tell(what)}</p>
                {next && <p>{tell(next)}</p>}
              </div>
              {deviationId && (
                <LinkButton to="/deviations/$deviationId" params={{ deviationId }}>
                  {say('read-it')}
                </LinkButton>
              )}
            </li>
          ))}
        </ul>
      )}
      {odd.length > 0 && (
        <Table
          caption={say('odd-entries')}
          rows={odd}
          rowKey={(row) => `${row.what} ${row.first} ${row.remarks.join(' ')}`}
          columns={[
            {
              head: say('entry'),
              cell: (row) => (
                <>
                  {row.what}
                  <Correction {...row} />
                </>
              ),
            },
            { head: say('why-here'), cell: (row) => row.remarks.map((remark) => <div key={remark}>{remark}</div>) },
            { head: say('when'), cell: (row) => whenOf(row, clock, say) },
            { head: say('by'), cell: (row) => row.by, oneLine: true },
          ]}
        />
      )}
    </Stack>
  );
}

/** What stands in the table of entries, or with its control point, is said there. */
const isRemark = ({ about, kind, blocks }: Finding): boolean =>
  !blocks && about !== 'entry' && (about !== 'control-point' || kind === 'flagged');

/** What stood there stays readable, struck through. */
function Correction({ correction }: OddEntry) {
  if (!correction) return null;
  return (
    <span className={css.correction}>
      <s>{correction.before}</s> <strong>{correction.after}</strong>
    </span>
  );
}

function whenOf({ first, last }: OddEntry, clock: Clock, say: SayOf<'reviews'>): string {
  const [from, to] = [Date.parse(first), Date.parse(last)];
  return from === to ? clock.dayAndTime(from) : say('from-to', { from: clock.dayAndTime(from), to: clock.when(to, from) });
}
