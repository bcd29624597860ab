import type { Trace } from '@larderbook/contracts';
import { sayGrams } from '../../api/say-grams';
import { useShop } from '../../api/use-shop';
import { dayWords } from '../../ui/moment';
import { Table } from '../../ui/table';
import css from './trace-sheet.module.css';

type Customer = Trace['customers'][number];

/** Everyone who has packages of it: whom to call, where they are, and what they got. */
export function CustomersReached({ customers }: { customers: Customer[] }) {
  const { zone, units } = useShop();
  return (
    <Table
      caption="Customers to call"
      captionUnseen
      rows={customers}
      rowKey={({ name, address }) => `${name} ${address}`}
      empty={<p>None: nothing of it has been shipped.</p>}
      columns={[
        {
          head: 'Customer',
          cell: ({ name, address }) => (
            <>
              {name}
              <span className={css.under}>{address || 'no address given'}</span>
            </>
          ),
        },
        { head: 'Call', cell: ({ contact }) => contact || 'no contact given' },
        {
          head: 'Got',
          cell: ({ shipments }) => (
            <ul className={css.plain}>
              {shipments.map(({ number, packingCode, count, at }) => (
                <li key={`${number} ${packingCode}`}>
                  {count} × {packingCode}
                  <span className={css.soft}>
                    shipment {number}, {dayWords(at, zone)}
                  </span>
                </li>
              ))}
            </ul>
          ),
        },
        { head: 'Packages', cell: ({ shipments }) => sum(shipments, 'count'), figures: true },
        { head: 'Weight', cell: ({ shipments }) => sayGrams(sum(shipments, 'grams'), units), figures: true },
      ]}
    />
  );
}

const sum = (shipments: Customer['shipments'], of: 'count' | 'grams'): number =>
  shipments.reduce((total, shipment) => total + shipment[of], 0);
