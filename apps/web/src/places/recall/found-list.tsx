import type { findTrace, ReplyOf } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { useShop } from '../../api/use-shop';
import { EmptyState } from '../../ui/empty-state';
import { dayWords } from '../../ui/moment';
import { Stack } from '../../ui/stack';
import css from './found-list.module.css';

type Found = ReplyOf<typeof findTrace>['found'];
const kinds = [
  ['receipt', 'Deliveries'],
  ['lot', 'Lots'],
  ['packing', 'Packages'],
] as const;

/** Where a trace can start, newest first, each kind under its own heading. */
export function FoundList({ found, words }: { found: Found; words: string }) {
  if (found.length === 0)
    return (
      <EmptyState title={`Nothing goes by “${words}”`}>
        Try fewer letters, or another word from the label or the delivery note.
      </EmptyState>
    );
  return (
    <Stack>
      {kinds.map(([kind, heading]) => {
        const ofKind = found.filter((each) => each.kind === kind);
        return ofKind.length > 0 && <FoundOfKind key={kind} heading={heading} found={ofKind} />;
      })}
    </Stack>
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
