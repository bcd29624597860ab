import type { SupplierLotTrace } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { massIn } from '@larderbook/haccp';
import { useShop, type Shop } from '../../api/use-shop';
import { Status } from '../../ui/status';
import { Table } from '../../ui/table';
import { useSay } from '../../ui/voice';
import { Weight } from '../../ui/weight';
import css from './trace-sheet.module.css';

type Delivery = SupplierLotTrace['deliveries'][number];

/** A refused delivery is listed too. */
export function DeliveriesOfLot({ deliveries }: { deliveries: Delivery[] }) {
  const say = useSay('trace');
  const { units } = useShop();
  return (
    <Table
      caption={say('every-delivery')}
      captionUnseen
      rows={deliveries}
      rowKey={({ receiptId }) => receiptId}
      empty={<p>{say('none-recorded')}</p>}
      columns={[
        {
          head: say('delivery'),
          cell: ({ receiptId, code, item, supplier, supplierLot, receivedAt }) => (
            <>
              <Link to="/trace/$nodeId" params={{ nodeId: receiptId }} className={css.link}>
                {code}
              </Link>
              <span className={css.under}>
                {say('delivery-line', { item, supplier, lot: supplierLot, day: { at: receivedAt, show: 'day' } })}
              </span>
            </>
          ),
        },
        { head: say('weight'), cell: ({ grams }) => <Weight grams={grams} units={units} />, figures: true },
        { head: say('what-became'), cell: (one) => <Became delivery={one} units={units} /> },
      ]}
    />
  );
}

function Became({ delivery, units }: { delivery: Delivery; units: Shop['units'] }) {
  const say = useSay('trace');
  if (delivery.decision === 'refused')
    return (
      <>
        <Status state="missed" word={say('refused')} margin={say('went-back', { weight: massIn(units, delivery.grams) })} />
        {delivery.reason && <span className={css.under}>{delivery.reason}</span>}
      </>
    );
  const parts = [
    [say('became-used'), delivery.usedGrams],
    [say('became-still-here'), delivery.onHandGrams],
    [say('became-removed'), delivery.removedGrams],
    [say('became-condemned'), delivery.condemnedGrams],
  ] as const;
  return (
    <>
      <ul className={css.plain}>
        {parts
          .filter(([, grams]) => grams !== 0)
          .map(([what, grams]) => (
            <li key={what} className={css.part}>
              <span>
                <Weight grams={grams} units={units} />
              </span>{' '}
              {what}
            </li>
          ))}
      </ul>
      {delivery.fault && (
        <Status
          state="missed"
          word={say('percent-accounted', { percent: { value: delivery.accountedPercent, unit: '%' } })}
          margin={<Fault delivery={delivery} units={units} />}
        />
      )}
    </>
  );
}

/** Nothing is packed of a delivery as it came: its fault is a weight, or that it is below zero. */
function Fault({ delivery: { fault, unexplainedGrams }, units }: { delivery: Delivery; units: Shop['units'] }) {
  const say = useSay('trace');
  const weight = massIn(units, Math.abs(unexplainedGrams));
  return fault === undefined || fault === 'below-zero' ? say('fault-below-zero') : say(`fault-${fault}`, { weight });
}
