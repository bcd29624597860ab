import { flagWords, type recordReceipt } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { useEffect } from 'react';
import type { Saved } from '../../../outbox/use-recording';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { LinkButton } from '../../../ui/link-button';
import { Question } from '../../../ui/question';
import { Row } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { sayEntered } from '../deliveries/say-receipt';
import { atTheDoor, type DeliveryDraft } from './delivery-draft';

type DeliverySavedProps = {
  saved: Saved<typeof recordReceipt>;
  draft: DeliveryDraft;
  /** Of this device: shown until the server's is there. */
  verdict?: Verdict;
  onAnother: () => void;
};

/** What became of it, the number to write on the boxes, and the way on. */
export function DeliverySaved({ saved, draft: { item, weight }, verdict: preview, onAnother }: DeliverySavedProps) {
  const receipt = saved.state === 'sent' ? saved.reply : undefined;
  const verdict = receipt?.verdict ?? preview;
  useEffect(() => {
    if (verdict?.kind === 'missed') announce(`Limit missed: ${verdict.because}`, { urgent: true, unseen: true });
  }, [verdict]);
  const what = `${item?.name ?? ''}, ${weight ? sayEntered(weight) : ''}`;
  return (
    <Question title={receipt ? `${receipt.code}: ${what}` : what} hint={sayWhere(receipt?.decision)}>
      {verdict && <VerdictWords verdict={atTheDoor(verdict, receipt?.decision)} size="large" />}
      {receipt?.flags.map((flag) => (
        <p key={flag}>Remark: {flagWords[flag]}.</p>
      ))}
      <Row>
        {receipt?.deviationId && (
          <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId: receipt.deviationId }}>
            Record the corrective action
          </LinkButton>
        )}
        <Button look={receipt?.deviationId ? 'plain' : 'primary'} onClick={onAnother}>
          Record another delivery
        </Button>
        <LinkButton to="/receiving">Done</LinkButton>
      </Row>
    </Question>
  );
}

function sayWhere(decision: 'accepted' | 'refused' | undefined): string {
  if (decision === undefined)
    return 'Kept on this device. It is sent when the connection is back, judged by the book itself, and gets its number then.';
  return decision === 'accepted'
    ? 'Recorded. Write this number on the boxes.'
    : 'Recorded as refused. It does not come in, and nothing of it can be used.';
}
