import { takeBackReview } from '@larderbook/contracts';
import { useState } from 'react';
import { useSession } from '../../api/session';
import { useShop } from '../../api/use-shop';
import { useRecording } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { KeptDialog } from '../../ui/kept-dialog';
import { WhyDialog } from '../../ui/why-dialog';
import { useSay } from '../../ui/voice';
import type { Review } from './review-view';

type Given = NonNullable<Review['lot']['review']>;

/** Whoever gave a signature, or the owner, may take it back. */
export function TakeBackReview({ lotCode, review, isTakenBackHere }: { lotCode: string; review: Given; isTakenBackHere: boolean }) {
  const say = useSay('reviews');
  const who = useSession();
  const { roles } = useShop();
  const [isAsking, setAsking] = useState(false);
  if (!roles.includes('owner') && !(roles.includes('reviewer') && who?.personId === review.personId)) return null;
  return (
    <>
      {!isTakenBackHere && (
        <Button look="quiet" onClick={() => setAsking(true)}>
          {say('take-back')}
        </Button>
      )}
      {isAsking && <Why lotCode={lotCode} reviewId={review.reviewId} onClose={() => setAsking(false)} />}
    </>
  );
}

function Why({ lotCode, reviewId, onClose }: { lotCode: string; reviewId: string; onClose: () => void }) {
  const say = useSay('reviews');
  const recording = useRecording(takeBackReview);
  const what = say('taken-back', { lot: lotCode });
  const save = async (reason: string) => {
    const saved = await recording.save({ takingBackId: recording.id, reviewId, reason }, what);
    if (saved?.state === 'sent') onClose();
  };
  if (recording.saved?.state === 'kept') return <KeptDialog title={what} state="kept" onClose={onClose} />;
  return (
    <WhyDialog
      title={say('take-back')}
      usual="to-take-back"
      verb={say('take-it-back')}
      saving={recording}
      onReason={(reason) => void save(reason)}
      onClose={onClose}
    >
      <p>{say('why-taken-back')}</p>
    </WhyDialog>
  );
}
