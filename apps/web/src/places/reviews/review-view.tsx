import { printLotRecord, type ReplyOf, type showReview } from '@larderbook/contracts';
import { hrefOf } from '../../api/client';
import { LinkButton } from '../../ui/link-button';
import { PaperButton } from '../../ui/paper-button';
import { PageHeader } from '../../ui/page-header';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { Status } from '../../ui/status';
import { useSay } from '../../ui/voice';
import { blockers } from './blockers';
import { ControlPoints } from './control-points';
import { InTheWay } from './in-the-way';
import { Signature } from './signature';
import { ToConsider } from './to-consider';
import { WentIn } from './went-in';

export type Review = ReplyOf<typeof showReview>;

export function ReviewView({ review }: { review: Review }) {
  const say = useSay('reviews');
  const { lot, findings } = review;
  const inTheWay = blockers(findings);
  const params = { lotId: lot.lotId };
  return (
    <Stack gap="wide">
      <PageHeader
        over={say('review')}
        title={`${lot.code} ${lot.productName}`}
        under={<Head review={review} inTheWay={inTheWay.length} />}
        actions={
          <>
            <LinkButton to="/lots/$lotId" params={params}>
              {say('day-sheet')}
            </LinkButton>
            <PaperButton href={(language) => hrefOf(printLotRecord, { ...params, language })}>{say('on-paper')}</PaperButton>
          </>
        }
      />
      <Section title={say('in-the-way')}>
        <InTheWay lotId={lot.lotId} blockers={inTheWay} />
      </Section>
      <Section title={say('control-points')}>
        <ControlPoints points={lot.controlPoints} />
      </Section>
      <Section title={say('to-consider')}>
        <ToConsider lot={lot} findings={findings} />
      </Section>
      <Section title={say('went-in')}>
        <WentIn lot={lot} />
      </Section>
      <Section title={say('signature')}>
        <Signature review={review} />
      </Section>
    </Stack>
  );
}

function Head({ review: { lot, ready }, inTheWay }: { review: Review; inTheWay: number }) {
  const say = useSay('reviews');
  if (lot.review?.counts && lot.review.packedSince === 0)
    return <Status size="large" state="met" word={say('signed')} margin={say('signed-by', { who: lot.review.by })} />;
  if (ready) return <Status size="large" state="undetermined" word={say('waiting')} margin={say('nothing-in-the-way')} />;
  return <Status size="large" state="missed" word={say('may-not-leave')} margin={say('things-in-the-way', { count: inTheWay })} />;
}
