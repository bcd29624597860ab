import type { findTrace, ReplyOf } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { dayWords } from '../../ui/moment';
import { Stack } from '../../ui/stack';
import css from './found-list.module.css';
import { many } from './many';

type Reply = ReplyOf<typeof findTrace>;
type Found = Reply['found'];
const kinds = [
  ['receipt', 'Deliveries'],
  ['lot', 'Lots'],
  ['packing', 'Packages'],
] as const;

/** Where a trace can start, newest first, each kind under its own heading. */
export function FoundList({ found, supplierLots, words }: Reply & { words: string }) {
  if (found.length + supplierLots.length === 0)
    return (
      <EmptyState title={`Nothing goes by “${words}”`}>Try fewer letters, or another word from the label or the delivery note.</EmptyState>
    );
  return (
    <Stack>
      {supplierLots.length > 0 && <SupplierLots lots={supplierLots} />}
      {kinds.map(([kind, heading]) => {
        const ofKind = found.filter((each) => each.kind === kind);
        return ofKind.length > 0 && <FoundOfKind key={kind} heading={heading} found={ofKind} />;
      })}
    </Stack>
  );
}

/** A supplier recalls a number: all its deliveries are traced together. */
function SupplierLots({ lots }: { lots: Reply['supplierLots'] }) {
  return (
    <section>
      <h2 className={css.heading}>Lots of suppliers</h2>
      <ul className={css.list}>
        {lots.map(({ supplierLot, supplierId, supplier, deliveries }) => (
          <li key={`${supplierId} ${supplierLot}`}>
            <Link to="/trace/supplier-lot" search={{ lot: supplierLot, supplier: supplierId }} className={css.row}>
              <strong>{supplierLot}</strong>
              <span>{supplier}</span>
              <span className={css.day}>{many(deliveries, 'delivery', 'deliveries')}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

function FoundOfKind({ heading, found }: { heading: string; found: Found }) {
  const { zone } = useShop();
  return (
    <section>
      <h2 className={css.heading}>{heading}</h2>
      <ul className={css.list}>
        {found.map(({ id, code, what, at }) => (
          <li key={id}>
            <Link to="/trace/$nodeId" params={{ nodeId: id }} className={css.row}>
              <strong>{code}</strong>
              <span>{what}</span>
              <span className={css.day}>{dayWords(at, zone)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
