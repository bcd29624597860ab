import { printLotRecord, type ReplyOf, type showReview } from '@larderbook/contracts';
import { hrefOf } from '../../api/client';
import { LinkButton } from '../../ui/link-button';
import { PaperButton } from '../../ui/paper-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { blockers } from './blockers';
import { ControlPoints } from './control-points';
import { InTheWay } from './in-the-way';
import { Signature } from './signature';
import { ToConsider } from './to-consider';
import { WentIn } from './went-in';

export type Review = ReplyOf<typeof showReview>;

/** One page per lot: what stands in the way, what is met or settled, what was odd, what went in, and the signature. */
export function ReviewView({ review }: { review: Review }) {
  const { lot, findings } = review;
  const inTheWay = blockers(findings);
  const params = { lotId: lot.lotId };
  return (
    <Stack gap="wide">
      <PageHeader
        over="Pre-shipment review"
        title={`${lot.code} ${lot.productName}`}
        under={<Head review={review} inTheWay={inTheWay.length} />}
        actions={
          <>
            <LinkButton to="/lots/$lotId" params={params}>
              Day sheet
            </LinkButton>
            <PaperButton href={(language) => hrefOf(printLotRecord, { ...params, language })}>Lot record on paper</PaperButton>
          </>
        }
      />
      <Section title="What stands in the way">
        <InTheWay lotId={lot.lotId} blockers={inTheWay} />
      </Section>
      <Section title="Control points">
        <ControlPoints points={lot.controlPoints} />
      </Section>
      <Section title="To consider before signing">
        <ToConsider lot={lot} findings={findings} />
      </Section>
      <Section title="What went in and what became of it">
        <WentIn lot={lot} />
      </Section>
      <Section title="Signature">
        <Signature review={review} />
      </Section>
    </Stack>
  );
}

function Head({ review: { lot, ready }, inTheWay }: { review: Review; inTheWay: number }) {
  if (lot.review?.counts && lot.review.packedSince === 0)
    return <Status size="large" state="met" word="Signed" margin={`by ${lot.review.by}`} />;
  if (ready) return <Status size="large" state="undetermined" word="Waiting for a signature" margin="nothing stands in the way" />;
  return (
    <Status
      size="large"
      state="missed"
      word="May not leave yet"
      margin={inTheWay === 1 ? 'one thing stands in the way' : `${inTheWay} things stand in the way`}
    />
  );
}
