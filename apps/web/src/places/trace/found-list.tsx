import type { findTrace, ReplyOf } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { EmptyState } from '../../ui/empty-state';
import { Stack } from '../../ui/stack';
import { useClock, useSay } from '../../ui/voice';
import { describe } from './describe';
import css from './found-list.module.css';

type Reply = ReplyOf<typeof findTrace>;
type Found = Reply['found'];
const kinds = [
  ['receipt', 'deliveries'],
  ['lot', 'lots'],
  ['packing', 'packages'],
] as const;

export function FoundList({ found, supplierLots, words }: Reply & { words: string }) {
  const say = useSay('trace');
  if (found.length + supplierLots.length === 0) return <EmptyState title={say('nothing-found', { words })}>{say('try-fewer')}</EmptyState>;
  return (
    <Stack>
      {supplierLots.length > 0 && <SupplierLots lots={supplierLots} />}
      {kinds.map(([kind, heading]) => {
        const ofKind = found.filter((each) => each.kind === kind);
        return ofKind.length > 0 && <FoundOfKind key={kind} heading={say(heading)} found={ofKind} />;
      })}
    </Stack>
  );
}

/** A supplier recalls a number: all its deliveries are traced together. */
function SupplierLots({ lots }: { lots: Reply['supplierLots'] }) {
  const say = useSay('trace');
  return (
    <section>
      <h2 className={css.heading}>{say('supplier-lots')}</h2>
      <ul className={css.list}>
        {lots.map(({ supplierLot, supplierId, supplier, deliveries }) => (
          <li key={`${supplierId} ${supplierLot}`}>
            <Link to="/trace/supplier-lot" search={{ lot: supplierLot, supplier: supplierId }} className={css.row}>
              <strong>{supplierLot}</strong>
              <span>{supplier}</span>
              <span className={css.day}>{say('count-deliveries', { count: deliveries })}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}

function FoundOfKind({ heading, found }: { heading: string; found: Found }) {
  const say = useSay('trace');
  const clock = useClock();
  return (
    <section>
      <h2 className={css.heading}>{heading}</h2>
      <ul className={css.list}>
        {found.map((node) => (
          <li key={node.id}>
            <Link to="/trace/$nodeId" params={{ nodeId: node.id }} className={css.row}>
              <strong>{node.code}</strong>
              <span>{describe(node, say)}</span>
              <span className={css.day}>{clock.day(Date.parse(node.at))}</span>
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
