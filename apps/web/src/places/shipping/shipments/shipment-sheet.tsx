import { Link } from '@tanstack/react-router';
import { Fragment, useState } from 'react';
import { sayGrams } from '../../../api/say-grams';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { CorrectedList } from '../../../ui/corrected-list';
import { dateWords, enteredWords } from '../../../ui/moment';
import { Sheet, SheetHeading } from '../../../ui/sheet';
import { Row } from '../../../ui/stack';
import { SheetEntry } from '../../../ui/sheet-entry';
import { byDay } from './by-day';
import { CorrectShipment } from './correct-shipment';
import { VoidShipment } from './void-shipment';
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

function ShipmentEntry({ shipment }: { shipment: Shipment }) {
  const { number, customer, document, made, lines, corrections, voided } = shipment;
  const { units, zone, mayRecord } = useShop();
  const [doing, setDoing] = useState<'correct' | 'void'>();
  const close = () => setDoing(undefined);
  const entered = enteredWords({ at: Date.parse(made.at), enteredAt: Date.parse(made.recordedAt) }, zone);
  const total = lines.reduce((sum, { netGrams }) => sum + netGrams, 0);
  return (
    <SheetEntry
      at={made.at}
      what={voided ? <s>{customer.name}</s> : <strong>{customer.name}</strong>}
      note={[`Shipment ${number}`, document, voided && 'voided', entered].filter(Boolean).join(', ')}
      value={voided ? undefined : sayGrams(total, units)}
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
      {corrections.length > 0 && <CorrectedList corrections={corrections} zone={zone} />}
      {mayRecord && !voided && (
        <Row>
          <Button look="quiet" aria-label={`Correct shipment ${number}`} onClick={() => setDoing('correct')}>
            Correct
          </Button>
          <Button look="quiet" aria-label={`Void shipment ${number}`} onClick={() => setDoing('void')}>
            Void
          </Button>
        </Row>
      )}
      {doing === 'correct' && <CorrectShipment shipment={shipment} onClose={close} />}
      {doing === 'void' && <VoidShipment shipment={shipment} onClose={close} />}
    </SheetEntry>
  );
}
