import { Link } from '@tanstack/react-router';
import { massIn } from '@larderbook/haccp';
import { Fragment, useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { CorrectedList } from '../../../ui/corrected-list';
import { useEntered } from '../../../ui/moment';
import { Sheet, SheetHeading } from '../../../ui/sheet';
import { Row } from '../../../ui/stack';
import { SheetEntry } from '../../../ui/sheet-entry';
import { useClock, useFigures, useSay } from '../../../ui/voice';
import { byDay } from './by-day';
import { CorrectShipment } from './correct-shipment';
import { VoidShipment } from './void-shipment';
import type { Shipment } from './shipment';
import css from './shipments.module.css';

/** The days run down the sheet. */
export function ShipmentSheet({ shipments }: { shipments: Shipment[] }) {
  const say = useSay('shipping');
  const { zone } = useShop();
  const clock = useClock(zone);
  return (
    <Sheet label={say('newest-first')} zone={zone}>
      {byDay(shipments, clock).map(({ day, shipments: ofDay }) => (
        <Fragment key={day}>
          <SheetHeading>{day}</SheetHeading>
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
  const say = useSay('shipping');
  const sayShared = useSay('shared');
  const { number: figure, quantity } = useFigures();
  const { units, zone, mayRecord } = useShop();
  const [open, setOpen] = useState<'correct' | 'void'>();
  const close = () => setOpen(undefined);
  const entered = useEntered({ at: made.at, recordedAt: made.recordedAt });
  const named = { number: String(number) };
  const total = lines.reduce((sum, { netGrams }) => sum + netGrams, 0);
  return (
    <SheetEntry
      at={made.at}
      what={voided ? <s>{customer.name}</s> : <strong>{customer.name}</strong>}
      note={[say('shipment', named), document, voided && say('voided'), entered].filter(Boolean).join(', ')}
      value={voided ? undefined : quantity(massIn(units, total))}
      who={made.name}
    >
      <ul className={css.lines}>
        {lines.map(({ packingId, packingCode, lotId, productName, count, netGrams }) => (
          <li key={packingId}>
            <span>
              {say('count-of', { count: figure(count), product: productName })}{' '}
              <Link to="/lots/$lotId" params={{ lotId }} className={css.code}>
                {packingCode}
              </Link>
            </span>
            <span className={css.weight}>{quantity(massIn(units, netGrams))}</span>
          </li>
        ))}
      </ul>
      {corrections.length > 0 && <CorrectedList corrections={corrections} zone={zone} />}
      {mayRecord && !voided && (
        <Row>
          <Button look="quiet" aria-label={say('correct-shipment', named)} onClick={() => setOpen('correct')}>
            {sayShared('correct')}
          </Button>
          <Button look="quiet" aria-label={say('void-shipment', named)} onClick={() => setOpen('void')}>
            {sayShared('void')}
          </Button>
        </Row>
      )}
      {open === 'correct' && <CorrectShipment shipment={shipment} onClose={close} />}
      {open === 'void' && <VoidShipment shipment={shipment} onClose={close} />}
    </SheetEntry>
  );
}
