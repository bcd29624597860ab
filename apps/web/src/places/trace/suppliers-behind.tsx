import type { Trace } from '@larderbook/contracts';
import { sayGrams } from '../../api/say-grams';
import { useShop } from '../../api/use-shop';
import { dayWords } from '../../ui/moment';
import { Table } from '../../ui/table';
import css from './trace-sheet.module.css';

/** Everyone something in it came from: whom to call, and by which lot numbers they know it. */
export function SuppliersBehind({ suppliers }: { suppliers: Trace['suppliers'] }) {
  const { zone, units } = useShop();
  return (
    <Table
      caption="Suppliers"
      captionUnseen
      rows={suppliers}
      rowKey={({ name, address }) => `${name} ${address}`}
      empty={<p>None is recorded.</p>}
      columns={[
        {
          head: 'Supplier',
          cell: ({ name, establishmentNumber, address }) => (
            <>
              {name}
              <span className={css.under}>{[establishmentNumber, address].filter(Boolean).join(', ') || 'no address given'}</span>
            </>
          ),
        },
        { head: 'Call', cell: ({ contact }) => contact || 'no contact given' },
        {
          head: 'Delivered',
          cell: ({ receipts }) => (
            <ul className={css.plain}>
              {receipts.map(({ code, item, supplierLot, grams, receivedAt }) => (
                <li key={code}>
                  {item}, lot {supplierLot}
                  <span className={css.soft}>
                    {code}, {sayGrams(grams, units)}, {dayWords(receivedAt, zone)}
                  </span>
                </li>
              ))}
            </ul>
          ),
        },
      ]}
    />
  );
}
