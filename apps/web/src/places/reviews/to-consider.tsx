import type { Finding, Lot } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { dayWords, timeWords } from '../../ui/moment';
import { StateMark } from '../../ui/status';
import { Stack } from '../../ui/stack';
import { Table } from '../../ui/table';
import { oddEntries, type OddEntry } from './odd-entries';
import css from './review.module.css';

/**
 * No obstacle, but for the reviewer to judge: settled deviations, what was left out or went in beside the formula,
 * corrected, clarified and flagged entries.
 */
export function ToConsider({ lot, findings }: { lot: Lot; findings: Finding[] }) {
  const { zone } = useShop();
  const remarks = findings.filter(isRemark);
  const odd = oddEntries(lot);
  if (remarks.length === 0 && odd.length === 0)
    return (
      <p className={css.clear}>
        <StateMark state="met" /> Nothing. No entry was corrected or flagged, and no deviation was opened.
      </p>
    );
  return (
    <Stack>
      {remarks.length > 0 && (
        <ul className={css.list}>
          {remarks.map(({ what, next, deviationId }) => (
            <li key={what} className={css.remark}>
              <div>
                <p className={css.what}>{what}</p>
                {next && <p>{next}</p>}
              </div>
              {deviationId && (
                <LinkButton to="/deviations/$deviationId" params={{ deviationId }}>
                  Read it
                </LinkButton>
              )}
            </li>
          ))}
        </ul>
      )}
      {odd.length > 0 && (
        <Table
          caption="Corrected, clarified and flagged entries"
          rows={odd}
          rowKey={(row) => `${row.what} ${row.first} ${row.remark}`}
          columns={[
            {
              head: 'Entry',
              cell: (row) => (
                <>
                  {row.what}
                  <Correction {...row} />
                </>
              ),
            },
            { head: 'Why it stands here', cell: (row) => row.remark },
            { head: 'When', cell: (row) => when(row, zone) },
            { head: 'By', cell: (row) => row.by, oneLine: true },
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

function when({ first, last }: OddEntry, zone: string): string {
  const from = `${dayWords(first, zone)}, ${timeWords(first, zone)}`;
  if (first === last) return from;
  return dayWords(first, zone) === dayWords(last, zone)
    ? `${from} to ${timeWords(last, zone)}`
    : `${from} to ${dayWords(last, zone)}, ${timeWords(last, zone)}`;
}
