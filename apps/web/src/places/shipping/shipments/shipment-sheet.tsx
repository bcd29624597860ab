import { Link } from '@tanstack/react-router';
import { Fragment } from 'react';
import { sayGrams } from '../../../api/say-grams';
import { useShop } from '../../../api/use-shop';
import { dateWords } from '../../../ui/moment';
import { Sheet, SheetHeading } from '../../../ui/sheet';
import { SheetEntry } from '../../../ui/sheet-entry';
import { byDay } from './by-day';
import type { Shipment } from './shipment';
import css from './shipments.module.css';

/** Shipments as a sheet on which the days run down: the customer, the weight, and each line with its lot. */
export function ShipmentSheet({ shipments }: { shipments: Shipment[] }) {
  const { zone } = useShop();
  return (
    <Sheet label="Shipments, newest first" zone={zone}>
      {byDay(shipments, zone).map(({ day, shipments: ofDay }) => (
        <Fragment key={day}>
          <SheetHeading>{dateWords(day)}</SheetHeading>
          {ofDay.map((shipment) => (
            <ShipmentEntry key={shipment.shipmentId} shipment={shipment} />
          ))}
        </Fragment>
      ))}
    </Sheet>
  );
}

function ShipmentEntry({ shipment: { number, customer, document, made, lines } }: { shipment: Shipment }) {
  const { units } = useShop();
  const total = lines.reduce((sum, { netGrams }) => sum + netGrams, 0);
  return (
    <SheetEntry
      at={made.at}
      what={<strong>{customer.name}</strong>}
      note={[`Shipment ${number}`, document && `document ${document}`].filter(Boolean).join(', ')}
      value={sayGrams(total, units)}
      who={made.name}
    >
      <ul className={css.lines}>
        {lines.map(({ packingId, packingCode, lotId, productName, count, netGrams }) => (
          <li key={packingId}>
            <span>
              {count} × {productName},{' '}
              <Link to="/lots/$lotId" params={{ lotId }} className={css.code}>
                {packingCode}
              </Link>
            </span>
            <span className={css.weight}>{sayGrams(netGrams, units)}</span>
          </li>
        ))}
      </ul>
    </SheetEntry>
  );
}
