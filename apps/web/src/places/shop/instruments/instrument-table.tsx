import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { CorrectedList } from '../../../ui/corrected-list';
import { BothMoments } from '../../../ui/moment';
import { Row } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Table, type Column } from '../../../ui/table';
import { useNow } from '../../../ui/time-left';
import type { Instrument } from './check-method';
import css from './instruments.module.css';
import { sayDue } from './say-due';

type InstrumentTableProps = {
  instruments: Instrument[];
  onCheck?: (instrument: Instrument) => void;
  onCorrect?: (instrument: Instrument) => void;
};

const aMinute = 60_000;

/** Each instrument with what it may be off by, its last check, and when the next is due; those that are due come first. */
export function InstrumentTable({ instruments, onCheck, onCorrect }: InstrumentTableProps) {
  const { zone } = useShop();
  const now = useNow(aMinute);
  const columns: Column<Instrument>[] = [
    {
      head: 'Instrument',
      cell: ({ name, kind, unit, tolerance }) => (
        <>
          {name}
          <span className={css.small}>
            {kind}, ± {tolerance} {unit}
          </span>
        </>
      ),
    },
    {
      head: 'Last check',
      cell: ({ lastCheck, corrections }) =>
        lastCheck || corrections.length > 0 ? (
          <div>
            {corrections.length > 0 && <CorrectedList corrections={corrections.slice(-1)} zone={zone} />}
            {lastCheck ? (
              <>
                {lastCheck.verdict.measured}
                <span className={css.small}>
                  <BothMoments at={lastCheck.made.at} recordedAt={lastCheck.made.recordedAt} zone={zone} />, {lastCheck.made.name},{' '}
                  {lastCheck.method}
                </span>
              </>
            ) : (
              'none that counts'
            )}
          </div>
        ) : (
          'none yet'
        ),
    },
    {
      head: 'Due',
      cell: (instrument) => (
        <div>
          <Status {...sayDue(instrument, now)} />
          <span className={css.small}>every {instrument.checkEveryDays === 1 ? 'day' : `${instrument.checkEveryDays} days`}</span>
        </div>
      ),
    },
    ...(onCheck
      ? [
          {
            head: 'Check',
            cell: (instrument: Instrument) => (
              <Row>
                <Button aria-label={`Record a check of ${instrument.name}`} onClick={() => onCheck(instrument)}>
                  Record a check
                </Button>
                {onCorrect && instrument.lastCheck && (
                  <Button look="quiet" aria-label={`Correct the check of ${instrument.name}`} onClick={() => onCorrect(instrument)}>
                    Correct
                  </Button>
                )}
              </Row>
            ),
          },
        ]
      : []),
  ];
  const dueFirst = [...instruments].sort((a, b) => Number(b.overdue) - Number(a.overdue) || a.name.localeCompare(b.name));
  return <Table caption="Instruments" captionUnseen columns={columns} rows={dueFirst} rowKey={({ instrumentId }) => instrumentId} />;
}
