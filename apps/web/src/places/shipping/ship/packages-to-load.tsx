import { EmptyState } from '../../../ui/empty-state';
import { LinkButton } from '../../../ui/link-button';
import { dateWords } from '../../../ui/moment';
import { Stack } from '../../../ui/stack';
import { Table } from '../../../ui/table';
import { Tiles } from '../../../ui/tiles';
import { MayShip } from '../stock/may-ship';
import type { Packing } from '../stock/packing';
import { sayUseBy } from '../stock/say-use-by';
import { useToday } from '../stock/use-today';
import css from './ship.module.css';

type PackagesToLoadProps = { packings: Packing[]; onTap: (packing: Packing) => void; isFirst: boolean };

/** Packages that may ship, as tiles, oldest use-by first; those that may not stand under them with the reason. */
export function PackagesToLoad({ packings, onTap, isFirst }: PackagesToLoadProps) {
  const today = useToday();
  const isPast = ({ useBy }: Packing) => sayUseBy(useBy, today).past;
  const [may, mayNot] = [packings.filter(({ mayShip }) => mayShip), packings.filter(({ mayShip }) => !mayShip)];
  const [good, past] = [may.filter((packing) => !isPast(packing)), may.filter(isPast)];
  const tiles = (some: Packing[]) =>
    some.map((packing) => ({
      key: packing.packingId,
      title: packing.productName,
      lines: linesOf(packing, today),
      onTap: () => onTap(packing),
    }));
  return (
    <Stack>
      {good.length > 0 && <Tiles label="Packages that may ship, oldest use-by first" tiles={tiles(good)} />}
      {past.length > 0 && (
        <div className={css.past}>
          <h3>Past their use-by</h3>
          <p>Cleared when they were reviewed. Decide what becomes of them before they leave.</p>
          <Tiles label="Packages past their use-by" tiles={tiles(past)} />
        </div>
      )}
      {may.length === 0 && isFirst && (
        <EmptyState title="No packages may ship now" action={<LinkButton to="/reviews">To review</LinkButton>}>
          Packages may ship once the review of their lot is signed.
        </EmptyState>
      )}
      {mayNot.length > 0 && (
        <details className={css.mayNot}>
          <summary>{mayNot.length === 1 ? '1 more may not ship' : `${mayNot.length} more may not ship`}</summary>
          <Table
            caption="Packages that may not ship"
            captionUnseen
            rows={mayNot}
            rowKey={({ packingId }) => packingId}
            columns={[
              { head: 'Package', cell: ({ code }) => code, oneLine: true },
              { head: 'Product', cell: ({ productName }) => productName },
              { head: 'Left', cell: ({ left }) => left, figures: true },
              { head: 'Why not', cell: (packing) => <MayShip packing={packing} today={today} /> },
            ]}
          />
        </details>
      )}
    </Stack>
  );
}

function linesOf({ code, left, net, useBy }: Packing, today: string) {
  return [code, `${left} left, ${net.value} ${net.unit} each`, `Use by ${dateWords(useBy)}, ${sayUseBy(useBy, today).words}`];
}
