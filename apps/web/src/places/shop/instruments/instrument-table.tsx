import { codeOf } from '@larderbook/messages';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Row } from '../../../ui/stack';
import { Status } from '../../../ui/status';
import { Table, type Column } from '../../../ui/table';
import { useNow } from '../../../ui/time-left';
import { useSay } from '../../../ui/voice';
import type { Instrument } from './check-method';
import { dueOf } from './due';
import css from './instruments.module.css';
import { LastCheck } from './last-check';

type InstrumentTableProps = {
  instruments: Instrument[];
  onCheck?: (instrument: Instrument) => void;
  onCorrect?: (instrument: Instrument) => void;
};

const aMinute = 60_000;

export function InstrumentTable({ instruments, onCheck, onCorrect }: InstrumentTableProps) {
  const say = useSay('instruments');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const now = useNow(aMinute);
  const columns: Column<Instrument>[] = [
    {
      head: say('instrument'),
      cell: ({ name, kind, unit, tolerance }) => (
        <>
          {name}
          <span className={css.small}>
            {say('kind-and-tolerance', { kind: say(codeOf('kind', kind)), tolerance: `${tolerance} ${unit}` })}
          </span>
        </>
      ),
    },
    {
      head: say('last-check'),
      cell: (instrument) => <LastCheck instrument={instrument} zone={zone} />,
    },
    {
      head: say('due'),
      cell: (instrument) => (
        <div>
          <Status {...dueOf(instrument, now, say)} />
          <span className={css.small}>{say('checked-every', { days: instrument.checkEveryDays })}</span>
        </div>
      ),
    },
    ...(onCheck
      ? [
          {
            head: say('check'),
            cell: (instrument: Instrument) => (
              <Row>
                <Button aria-label={say('record-check-of', { name: instrument.name })} onClick={() => onCheck(instrument)}>
                  {say('record-check')}
                </Button>
                {onCorrect && instrument.lastCheck && (
                  <Button
                    look="quiet"
                    aria-label={say('correct-check-of', { name: instrument.name })}
                    onClick={() => onCorrect(instrument)}
                  >
                    {sayShared('correct')}
                  </Button>
                )}
              </Row>
            ),
          },
        ]
      : []),
  ];
  const dueFirst = [...instruments].sort((a, b) => Number(b.overdue) - Number(a.overdue) || a.name.localeCompare(b.name));
  return <Table caption={say('title')} captionUnseen columns={columns} rows={dueFirst} rowKey={({ instrumentId }) => instrumentId} />;
}
