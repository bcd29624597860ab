import { listReceipts, type Receipt, type ReplyOf } from '@larderbook/contracts';
import { Fragment, type ReactNode } from 'react';
import { useEarlier } from '../../../api/earlier';
import { useShop } from '../../../api/use-shop';
import { useOutbox } from '../../../outbox/use-outbox';
import { Button } from '../../../ui/button';
import { EmptyState } from '../../../ui/empty-state';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Sheet, SheetHeading } from '../../../ui/sheet';
import { SheetEntry } from '../../../ui/sheet-entry';
import { useClock, useSay } from '../../../ui/voice';
import { daysOf } from './days-of';
import { DeliveryLine } from './delivery-line';

/** Earlier deliveries are fetched when they are asked for. */
export function DeliveryList({ record }: { record: ReactNode }) {
  const say = useSay('receiving');
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const clock = useClock(zone);
  const kept = useOutbox().waiting.filter(({ path }) => path.startsWith('/receipts/'));
  const { rows: receipts, error, refetch, isFetching, more } = useEarlier(listReceipts, { left: 'any' }, reading);
  if (!receipts) return error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />;

  if (receipts.length === 0 && kept.length === 0) {
    return (
      <EmptyState title={say('none-yet')} action={record}>
        {say('why-recorded')}
      </EmptyState>
    );
  }
  return (
    <>
      <Sheet label={say('newest-first')} zone={zone}>
        {kept.length > 0 && <SheetHeading>{say('not-sent')}</SheetHeading>}
        {kept.map(({ id, takenAt, what }) => (
          <SheetEntry key={id} at={takenAt} what={what} />
        ))}
        {daysOf(receipts, clock).map(({ day, receipts: ofDay }) => (
          <Fragment key={day}>
            <SheetHeading>{day}</SheetHeading>
            {ofDay.map((receipt) => (
              <DeliveryLine key={receipt.receiptId} receipt={receipt} />
            ))}
          </Fragment>
        ))}
      </Sheet>
      {more && (
        <Button wide busy={isFetching && sayShared('loading')} onClick={more}>
          {say('earlier')}
        </Button>
      )}
    </>
  );
}

const reading = {
  rowsOf: ({ receipts }: ReplyOf<typeof listReceipts>) => receipts,
  idOf: ({ receiptId }: Receipt) => receiptId,
  at: ({ made }: Receipt) => made.at,
};
