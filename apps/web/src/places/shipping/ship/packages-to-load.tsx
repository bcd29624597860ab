import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import { Tiles } from '../../../ui/tiles';
import { useFigures, useSay } from '../../../ui/voice';
import { MayShip } from '../stock/may-ship';
import type { Packing } from '../stock/packing';
import { distanceTo, isPast } from '../stock/use-by';
import { useToday } from '../stock/use-today';
import css from './ship.module.css';

type PackagesToLoadProps = { packings: Packing[]; onTap: (packing: Packing) => void; isFirst: boolean };

/** Oldest use-by first; packages that may not ship stand below with the reason. */
export function PackagesToLoad({ packings, onTap, isFirst }: PackagesToLoadProps) {
  const say = useSay('shipping');
  const { number, quantity } = useFigures();
  const today = useToday();
  const isOver = ({ useBy }: Packing) => isPast(useBy, today);
  const linesOf = ({ code, left, net, useBy }: Packing) => [
    code,
    say('left-each', { left: number(left), weight: quantity(net) }),
    say('use-by-day', { day: { day: useBy }, when: distanceTo(useBy, today, say) }),
  ];
  const [may, mayNot] = [packings.filter(({ mayShip }) => mayShip), packings.filter(({ mayShip }) => !mayShip)];
  const [good, past] = [may.filter((packing) => !isOver(packing)), may.filter(isOver)];
  const tiles = (some: Packing[]) =>
    some.map((packing) => ({
      key: packing.packingId,
      title: packing.productName,
      lines: linesOf(packing),
      onTap: () => onTap(packing),
    }));
  return (
    <Stack>
      {good.length > 0 && <Tiles label={say('may-ship-oldest')} tiles={tiles(good)} />}
      {past.length > 0 && (
        <div className={css.past}>
          <h3>{say('past-title')}</h3>
          <p>{say('past-hint')}</p>
          <Tiles label={say('past-packages')} tiles={tiles(past)} />
        </div>
      )}
      {may.length === 0 && isFirst && (
        <EmptyState title={say('none-may-ship')} action={<LinkButton to="/reviews">{say('to-review')}</LinkButton>}>
          {say('once-signed')}
        </EmptyState>
      )}
      {mayNot.length > 0 && (
        <details className={css.mayNot}>
          <summary>{say('more-may-not', { count: mayNot.length })}</summary>
          <Table
            caption={say('may-not-packages')}
            captionUnseen
            rows={mayNot}
            rowKey={({ packingId }) => packingId}
            columns={[
              { head: say('package'), cell: ({ code }) => code, oneLine: true },
              { head: say('product'), cell: ({ productName }) => productName },
              { head: say('left'), cell: ({ left }) => left, figures: true },
              { head: say('why-not'), cell: (packing) => <MayShip packing={packing} today={today} /> },
            ]}
          />
        </details>
      )}
    </Stack>
  );
}
