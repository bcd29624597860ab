import { takeBackReview } from '@larderbook/contracts';
import { useState } from 'react';
import { useSession } from '../../api/session';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { WhyDialog } from '../../ui/why-dialog';
import type { Review } from './review-view';

type Given = NonNullable<Review['lot']['review']>;

/** A signature is taken back by whoever gave it, or by the owner. */
export function TakeBackReview({ lotCode, review }: { lotCode: string; review: Given }) {
  const who = useSession();
  const { roles } = useShop();
  const [isAsking, setAsking] = useState(false);
  if (!roles.includes('owner') && !(roles.includes('reviewer') && who?.personId === review.personId)) return null;
  return (
    <>
      <Button look="quiet" onClick={() => setAsking(true)}>
        Take the signature back
      </Button>
      {isAsking && <Why lotCode={lotCode} reviewId={review.reviewId} onClose={() => setAsking(false)} />}
    </>
  );
}

function Why({ lotCode, reviewId, onClose }: { lotCode: string; reviewId: string; onClose: () => void }) {
  const recording = useRecording(takeBackReview);
  const save = async (reason: string) => {
    const saved = await recording.save({ takingBackId: recording.id, reviewId, reason }, `Review of lot ${lotCode} taken back`);
    if (saved) onClose();
  };
  return (
    <WhyDialog
      title="Take the signature back"
      usual="to-take-back"
      verb="Take it back"
      saving={recording}
      onReason={(reason) => void save(reason)}
      onClose={onClose}
    >
      <p>
        Why? The lot may not ship until its review is signed anew. The signature stays on the record, with this reason; what has shipped
        under it is named.
      </p>
    </WhyDialog>
  );
}
