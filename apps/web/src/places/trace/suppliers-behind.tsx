import type { Trace } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import { Table } from '../../ui/table';
import { useSay } from '../../ui/voice';
import { Weight } from '../../ui/weight';
import css from './trace-sheet.module.css';

export function SuppliersBehind({ suppliers }: { suppliers: Trace['suppliers'] }) {
  const say = useSay('trace');
  const { zone, units } = useShop();
  return (
    <Table
      caption={say('suppliers')}
      captionUnseen
      rows={suppliers}
      rowKey={({ name, address }) => `${name} ${address}`}
      empty={<p>{say('none-recorded')}</p>}
      columns={[
        {
          head: say('supplier'),
          cell: ({ name, establishmentNumber, address }) => (
            <>
              {name}
              <span className={css.under}>{[establishmentNumber, address].filter(Boolean).join(', ') || say('no-address')}</span>
            </>
          ),
        },
        { head: say('call'), cell: ({ contact }) => contact || say('no-contact') },
        {
          head: say('delivered'),
          cell: ({ receipts }) => (
            <ul className={css.plain}>
              {receipts.map(({ code, item, supplierLot, grams, receivedAt }) => (
                <li key={code}>
                  {say('item-lot', { item, lot: supplierLot })}
                  <span className={css.soft}>
                    {code}, <Weight grams={grams} units={units} />, <Moment at={receivedAt} zone={zone} show="day" />
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
