import { Link } from '@tanstack/react-router';
import { EmptyState } from '../../../ui/empty-state';
import { dateWords } from '../../../ui/moment';
import { Table } from '../../../ui/table';
import { MayShip } from './may-ship';
import type { Packing } from './packing';
import { sayUseBy } from './say-use-by';
import css from './stock.module.css';
import { useToday } from './use-today';

/** The packages that are still here, each with its lot, how many are left, its use-by, and whether it may ship. */
export function StockTable({ packings }: { packings: Packing[] }) {
  const today = useToday();
  return (
    <Table
      caption="Packages in stock"
      captionUnseen
      rows={packings}
      rowKey={({ packingId }) => packingId}
      empty={
        <EmptyState title="Nothing is in stock">Packages stand here from the moment a lot is packed until they are shipped.</EmptyState>
      }
      columns={[
        {
          head: 'Package',
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
          head: 'Left',
          cell: ({ left, count, net }) => (
            <>
              <strong className={css.left}>{left}</strong> of {count}
              <span className={css.small}>
                {net.value} {net.unit} each
              </span>
            </>
          ),
          figures: true,
        },
        { head: 'Use by', cell: ({ useBy }) => <UseBy day={useBy} today={today} />, oneLine: true },
        { head: 'May it ship?', cell: (packing) => <MayShip packing={packing} today={today} /> },
      ]}
    />
  );
}

function UseBy({ day, today }: { day: string; today: string }) {
  const { words, past } = sayUseBy(day, today);
  return (
    <>
      {dateWords(day)}
      <span className={past ? css.past : css.small}>{words}</span>
    </>
  );
}
