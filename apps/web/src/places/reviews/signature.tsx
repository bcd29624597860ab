import { Moment } from '../../ui/moment';
import { useOutbox } from '../../outbox/use-outbox';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { Row, Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import css from './signature.module.css';
import { SignForm } from './sign-form';
import type { Review } from './review-view';
import { TakeBackReview } from './take-back-review';

export function Signature({ review }: { review: Review }) {
  const { lot, maySign } = review;
  const isSigned = lot.review?.counts === true;
  if (lot.review && isSigned && lot.review.packedSince === 0) return <Signed lotCode={lot.code} review={lot.review} />;
  return (
    <Stack>
      {lot.review && (isSigned ? <PackedSince review={lot.review} /> : <Outdated review={lot.review} />)}
      {maySign ? <SignForm review={review} /> : <MayNot review={review} />}
    </Stack>
  );
}

type Given = NonNullable<Review['lot']['review']>;

function Signed({ lotCode, review }: { lotCode: string; review: Given }) {
  const say = useSay('reviews');
  const isTakenBackHere = useOutbox().waiting.some(({ body }) => body?.reviewId === review.reviewId && body.lotId === undefined);
  return (
    <div className={css.signed}>
      <blockquote className={css.statement}>{review.statement}</blockquote>
      <p className={css.hand}>{review.by}</p>
      <SignedAt review={review} />
      {review.soleWorker && <p>{say('by-sole-worker')}</p>}
      {isTakenBackHere && <p>{say('taken-back-here')}</p>}
      <Row>
        {!isTakenBackHere && <LinkButton to="/shipping">{say('to-shipping')}</LinkButton>}
        <TakeBackReview lotCode={lotCode} review={review} isTakenBackHere={isTakenBackHere} />
      </Row>
    </div>
  );
}

function SignedAt({ review }: { review: Given }) {
  const { zone } = useShop();
  return (
    <p className={css.small}>
      <Moment at={review.at} zone={zone} />
    </p>
  );
}

function Outdated({ review: { by: who, at, takenBack } }: { review: Given }) {
  const say = useSay('reviews');
  const signed = { who, when: { at } };
  if (!takenBack?.reason) return <p>{say('recorded-since', signed)}</p>;
  return <p>{say('taken-back-since', { ...signed, by: takenBack.by, reason: takenBack.reason })}</p>;
}

/** The signature does not cover later packages (9 CFR 417.5(c)). */
function PackedSince({ review: { by: who, at, packedSince } }: { review: Given }) {
  const say = useSay('reviews');
  return <p>{say('packed-since', { who, when: { at }, count: packedSince })}</p>;
}

/** Tells why not, and who could. */
function MayNot({ review: { whyNot, recordedBy } }: { review: Review }) {
  const say = useSay('reviews');
  const sayWhy = useSay('problem-details');
  return (
    <div className={css.mayNot}>
      <p className={css.whyNot}>{whyNot && sayWhy(whyNot)}</p>
      {recordedBy.length > 0 && <p>{say('records-by', { names: recordedBy })}</p>}
    </div>
  );
}
