import { listPublishedLimits, showProductLimits } from '@larderbook/contracts';
import type { CriticalLimit, LimitKind } from '@larderbook/haccp';
import { useQuery } from '@tanstack/react-query';
import { useParams } from '@tanstack/react-router';
import { ask } from '../../../api/ask';
import { Dialog } from '../../../ui/dialog';
import { Loading } from '../../../ui/loading';
import { Problem } from '../../../ui/problem';
import { Section } from '../../../ui/section';
import { Stack } from '../../../ui/stack';
import { useLimits } from '../../../ui/use-tell';
import { firstForProduct, type Offered } from '../applying/first-for-product';
import { ForThisProduct } from '../applying/for-this-product';
import { needsWords } from '../applying/needs-words';
import { useShop } from '../../../api/use-shop';
import css from './limits.module.css';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

type PublishedDialogProps = { kinds: LimitKind[]; onTake: (limit: CriticalLimit) => void; onClose: () => void };

/** Limits that apply to the product by the edition in use come first. None is chosen until the person chooses. */
export function PublishedDialog({ kinds, onTake, onClose }: PublishedDialogProps) {
  const say = useSay('limit-forms');
  const { productId } = useParams({ from: '/products/$productId/plan/points/$controlPointId' });
  const published = useQuery(ask(listPublishedLimits, {}));
  const applying = useQuery(ask(showProductLimits, { productId }));
  const waiting = [published, applying].find(({ data }) => !data);
  const { own, others } = firstForProduct({
    limits: applying.data?.limits ?? [],
    published: published.data?.limits ?? [],
    kinds,
  });
  const ours = others.filter((offered) => offered.own);
  const groups = kinds
    .map((kind) => ({ kind, limits: others.filter((offered) => !offered.own && offered.limit.kind === kind) }))
    .filter(({ limits }) => limits.length > 0);
  return (
    <Dialog title={say('choose-published')} onClose={onClose}>
      <Stack>
        <p>{say('reference-only')}</p>
        {waiting?.error && <Problem error={waiting.error} onRetry={() => void waiting.refetch()} />}
        {waiting && !waiting.error && <Loading />}
        {applying.data && <ForThisProduct limits={applying.data} count={own.length} />}
        {!waiting && <Offers limits={own} label={say('for-this-product')} onTake={onTake} />}
        {!waiting && own.length + ours.length + groups.length === 0 && <p>{say('none-published')}</p>}
        {!waiting && ours.length > 0 && (
          <Section title={say('own-of-shop')}>
            <Offers limits={ours} label={say('own-limits')} onTake={onTake} />
          </Section>
        )}
        {!waiting &&
          groups.map(({ kind, limits }) => (
            <Section key={kind} title={say('other-sets', { kind: say(codeOf('kind', kind)) })}>
              <Offers limits={limits} label={say(codeOf('kind', kind))} onTake={onTake} />
            </Section>
          ))}
      </Stack>
    </Dialog>
  );
}

type OffersProps = { limits: Offered[]; label: string; onTake: (limit: CriticalLimit) => void };

function Offers({ limits, label, onTake }: OffersProps) {
  if (limits.length === 0) return null;
  return (
    <ul className={css.offer} aria-label={label}>
      {limits.map((offered) => (
        <Offer key={offered.key} offered={offered} onTake={onTake} />
      ))}
    </ul>
  );
}

type OfferProps = { offered: Offered; onTake: (limit: CriticalLimit) => void };

function Offer({ offered: { title, limit, alsoNeeds = [], own }, onTake }: OfferProps) {
  const say = useSay('limit-forms');
  const { degrees } = useShop();
  const { sayLimit } = useLimits();
  const { citation, edition, confirmed } = limit.source;
  return (
    <li>
      <button type="button" className={css.published} onClick={() => onTake(limit)}>
        <strong>{title}</strong>
        <span>{sayLimit(limit, degrees)}</span>
        <span className={css.small}>
          {citation}, {edition}
        </span>
        {own && <span className={css.small}>{say('from-own-set', { title: own.title, edition: own.edition })}</span>}
        {alsoNeeds.length > 0 && <span className={css.small}>{say('also-needs', { needs: needsWords(alsoNeeds) })}</span>}
        {!confirmed && (
          <span className={css.small}>
            <strong>{say('not-confirmed')}</strong> {say('say-what-supports')}
          </span>
        )}
      </button>
    </li>
  );
}
