import { dayWords, timeWords } from '../../ui/moment';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { Row, Stack } from '../../ui/stack';
import css from './signature.module.css';
import { SignForm } from './sign-form';
import type { Review } from './review-view';
import { TakeBackReview } from './take-back-review';

/** The signature under the review: the one that counts, the form to give it, or why this person may not. */
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
  return (
    <div className={css.signed}>
      <blockquote className={css.statement}>{review.statement}</blockquote>
      <p className={css.hand}>{review.by}</p>
      <SignedAt review={review} />
      {review.soleWorker && <p>Signed by the person who made the records, as the only one who works here.</p>}
      <Row>
        <LinkButton to="/shipping">To shipping</LinkButton>
        <TakeBackReview lotCode={lotCode} review={review} />
      </Row>
    </div>
  );
}

function SignedAt({ review }: { review: Given }) {
  const { zone } = useShop();
  return (
    <p className={css.small}>
      {dayWords(review.at, zone)}, {timeWords(review.at, zone)}
    </p>
  );
}

function Outdated({ review }: { review: Given }) {
  const { zone } = useShop();
  return (
    <p>
      {review.by} signed on {dayWords(review.at, zone)} at {timeWords(review.at, zone)}.{' '}
      {review.takenBack?.reason
        ? `${review.takenBack.by} took that back: ${review.takenBack.reason}`
        : 'Something was recorded after that.'}{' '}
      The lot needs a new signature.
    </p>
  );
}

/** What the signature that stands does not cover (9 CFR 417.5(c)). */
function PackedSince({ review: { by, at, packedSince } }: { review: Given }) {
  const { zone } = useShop();
  return (
    <p>
      {by} signed on {dayWords(at, zone)} at {timeWords(at, zone)}. {packedSince === 1 ? '1 package was' : `${packedSince} packages were`}{' '}
      packed after that and may not ship until the review is signed for them too.
    </p>
  );
}

/** Why not, in words, and who could. */
function MayNot({ review: { whyNot, recordedBy } }: { review: Review }) {
  return (
    <div className={css.mayNot}>
      <p className={css.whyNot}>{whyNot}</p>
      {recordedBy.length > 0 && <p>Records of this lot were made by {list(recordedBy)}.</p>}
    </div>
  );
}

const list = (names: string[]) => new Intl.ListFormat('en').format(names);
