import { listPublishedLimits, type ReplyOf } from '@larderbook/contracts';
import { sayLimit, type CriticalLimit } from '@larderbook/haccp';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import { Dialog } from '../../../ui/dialog';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { useShop } from '../use-shop';
import { limitKindWords, type LimitKind } from './limit-kinds';
import css from './limits.module.css';

type Published = ReplyOf<typeof listPublishedLimits>['limits'][number];
type PublishedDialogProps = { kinds: LimitKind[]; onTake: (limit: CriticalLimit) => void; onClose: () => void };

/** The published limits that can be judged from what is recorded here, kind by kind, each with its source. */
export function PublishedDialog({ kinds, onTake, onClose }: PublishedDialogProps) {
  const { data, error, refetch } = useQuery(ask(listPublishedLimits, {}));
  const groups = kinds.map(
    (kind) => ({ kind, limits: (data?.limits ?? []).filter(({ limit }) => limit.kind === kind) })
  ).filter(({ limits }) => limits.length > 0);
  return (
    <Dialog title="Choose a published limit" closeLabel="Leave it" onClose={onClose}>
      <Stack>
        <p>
          A published limit is a reference: whether it fits your process is for you to support, and for your inspector
          and a process authority to accept.
        </p>
        {error && !data && <Problem error={error} onRetry={() => void refetch()} />}
        {!data && !error && <Loading what="the published limits" />}
        {data && groups.length === 0 && (
          <p>There is no published limit of this kind. Write one of your own, with its source.</p>
        )}
        {groups.map(({ kind, limits }) => (
          <Section key={kind} title={limitKindWords[kind].name}>
            <ul className={css.offer}>
              {limits.map((published) => <Offer key={published.key} published={published} onTake={onTake} />)}
            </ul>
          </Section>
        ))}
      </Stack>
    </Dialog>
  );
}

type OfferProps = { published: Published; onTake: (limit: CriticalLimit) => void };

function Offer({ published: { title, limit }, onTake }: OfferProps) {
  const { degrees } = useShop();
  const { citation, edition, confirmed } = limit.source;
  return (
    <li>
      <button type="button" className={css.published} onClick={() => onTake(limit)}>
        <strong>{title}</strong>
        <span>{sayLimit(limit, degrees)}</span>
        <span className={css.small}>{citation}, {edition}</span>
        {!confirmed && (
          <span className={css.small}>
            <strong>Not confirmed in the source itself.</strong> Keep your own support on file.
          </span>
        )}
      </button>
    </li>
  );
}
