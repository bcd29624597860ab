import type { Trace } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Table } from '../../ui/table';
import { useSay } from '../../ui/voice';
import { Weight } from '../../ui/weight';
import css from './trace-sheet.module.css';

type Customer = Trace['customers'][number];

export function CustomersReached({ customers }: { customers: Customer[] }) {
  const say = useSay('trace');
  const { units } = useShop();
  return (
    <Table
      caption={say('customers-to-call')}
      captionUnseen
      rows={customers}
      rowKey={({ name, address }) => `${name} ${address}`}
      empty={<p>{say('none-shipped')}</p>}
      columns={[
        {
          head: say('customer'),
          cell: ({ name, address }) => (
            <>
              {name}
              <span className={css.under}>{address || say('no-address')}</span>
            </>
          ),
        },
        { head: say('call'), cell: ({ contact }) => contact || say('no-contact') },
        {
          head: say('got'),
          cell: ({ shipments }) => (
            <ul className={css.plain}>
              {shipments.map(({ number, packingCode, count, at }) => (
                <li key={`${number} ${packingCode}`}>
                  {count} × {packingCode}
                  <span className={css.soft}>{say('in-shipment', { number: String(number), day: { at, show: 'day' } })}</span>
                </li>
              ))}
            </ul>
          ),
        },
        { head: say('packages'), cell: ({ shipments }) => sum(shipments, 'count'), figures: true },
        { head: say('weight'), cell: ({ shipments }) => <Weight grams={sum(shipments, 'grams')} units={units} />, figures: true },
      ]}
    />
  );
}

const sum = (shipments: Customer['shipments'], of: 'count' | 'grams'): number =>
  shipments.reduce((total, shipment) => total + shipment[of], 0);
