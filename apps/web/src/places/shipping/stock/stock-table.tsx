import { Link } from '@tanstack/react-router';
import { EmptyState } from '../../../ui/empty-state';
import { Table } from '../../../ui/table';
import { useClock, useFigures, useSay } from '../../../ui/voice';
import { MayShip } from './may-ship';
import type { Packing } from './packing';
import { distanceTo, isPast } from './use-by';
import css from './stock.module.css';
import { useToday } from './use-today';

export function StockTable({ packings }: { packings: Packing[] }) {
  const say = useSay('shipping');
  const { number, quantity } = useFigures();
  const today = useToday();
  return (
    <Table
      caption={say('stock')}
      captionUnseen
      rows={packings}
      rowKey={({ packingId }) => packingId}
      empty={<EmptyState title={say('nothing-in-stock')}>{say('from-packing')}</EmptyState>}
      columns={[
        {
          head: say('package'),
          cell: ({ code, lotId, productName }) => (
            <>
              <Link to="/lots/$lotId" params={{ lotId }} className={css.code}>
                {code}
              </Link>
              <span className={css.product}>{productName}</span>
            </>
          ),
        },
        {
          head: say('left'),
          cell: ({ left, count, net }) => (
            <>
              <span className={css.left}>{say('left-of', { left: number(left), count: number(count) })}</span>
              <span className={css.small}>{say('each', { weight: quantity(net) })}</span>
            </>
          ),
          figures: true,
        },
        { head: say('use-by'), cell: ({ useBy }) => <UseBy day={useBy} today={today} />, oneLine: true },
        { head: say('may-it-ship'), cell: (packing) => <MayShip packing={packing} today={today} /> },
      ]}
    />
  );
}

function UseBy({ day, today }: { day: string; today: string }) {
  const say = useSay('shipping');
  const clock = useClock();
  return (
    <>
      {clock.calendarDay(day)}
      <span className={isPast(day, today) ? css.past : css.small}>{distanceTo(day, today, say)}</span>
    </>
  );
}
