import type { SupplierLotTrace } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { sayGrams } from '../../api/say-grams';
import { useShop, type Shop } from '../../api/use-shop';
import { dayWords } from '../../ui/moment';
import { Status } from '../../ui/status';
import { Table } from '../../ui/table';
import css from './trace-sheet.module.css';

type Delivery = SupplierLotTrace['deliveries'][number];

/** Each delivery of the number, a refused one too, with its weight and what became of it. */
export function DeliveriesOfLot({ deliveries }: { deliveries: Delivery[] }) {
  const { zone, units } = useShop();
  return (
    <Table
      caption="Every delivery of this number"
      captionUnseen
      rows={deliveries}
      rowKey={({ receiptId }) => receiptId}
      empty={<p>None is recorded.</p>}
      columns={[
        {
          head: 'Delivery',
          cell: ({ receiptId, code, item, supplier, supplierLot, receivedAt }) => (
            <>
              <Link to="/trace/$nodeId" params={{ nodeId: receiptId }} className={css.link}>
                {code}
              </Link>
              <span className={css.under}>
                {item} from {supplier}, lot {supplierLot}, {dayWords(receivedAt, zone)}
              </span>
            </>
          ),
        },
        { head: 'Weight', cell: ({ grams }) => sayGrams(grams, units), figures: true },
        { head: 'What became of it', cell: (one) => <Became delivery={one} units={units} /> },
      ]}
    />
  );
}

function Became({ delivery, units }: { delivery: Delivery; units: Shop['units'] }) {
  if (delivery.decision === 'refused')
    return (
      <>
        <Status state="missed" word="Refused" margin={`${sayGrams(delivery.grams, units)} went back`} />
        {delivery.reason && <span className={css.under}>{delivery.reason}</span>}
      </>
    );
  const parts: [string, number][] = [
    ['went into lots', delivery.usedGrams],
    ['still here', delivery.onHandGrams],
    ['lost, taken out or sent back', delivery.removedGrams],
    ['condemned', delivery.condemnedGrams],
  ];
  return (
    <>
      <ul className={css.plain}>
        {parts
          .filter(([, grams]) => grams !== 0)
          .map(([what, grams]) => (
            <li key={what} className={css.part}>
              <span>{sayGrams(grams, units)}</span> {what}
            </li>
          ))}
      </ul>
      {delivery.fault && <Status state="missed" word={`${delivery.accountedPercent} % accounted for`} margin={delivery.fault} />}
    </>
  );
}
