import type { recordReceipt } from '@larderbook/contracts';
import type { Verdict } from '@larderbook/haccp';
import { useEffect } from 'react';
import type { Saved } from '../../../outbox/use-recording';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { LinkButton } from '../../../ui/link-button';
import { Question } from '../../../ui/question';
import { Row } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { useFigures, useSay } from '../../../ui/voice';
import { atTheDoor, type DeliveryDraft } from './delivery-draft';
import { useTell } from '../../../ui/use-tell';
import { receivingRange } from './receiving-units';

type DeliverySavedProps = {
  saved: Saved<typeof recordReceipt>;
  draft: DeliveryDraft;
  /** This device's verdict, shown until the server's is there. */
  verdict?: Verdict;
  onAnother: () => void;
};

export function DeliverySaved({ saved, draft: { item, weight }, verdict: preview, onAnother }: DeliverySavedProps) {
  const say = useSay('receiving');
  const sayEntry = useSay('entries');
  const sayShared = useSay('shared');
  const { quantity } = useFigures();
  const receipt = saved.state === 'sent' ? saved.reply : undefined;
  const { tell } = useTell();
  const judged = receipt?.verdict ?? preview;
  const verdict = judged && tell(judged, receipt?.limit ?? (item && receivingRange(item)));
  const missed = verdict?.kind === 'missed' ? verdict.because : undefined;
  useEffect(() => {
    if (missed) announce(say('limit-missed', { because: missed }), { urgent: true, unseen: true });
  }, [missed, say]);
  const what = { item: item?.name ?? '', weight: weight ? quantity(weight) : '' };
  return (
    <Question
      title={receipt ? say('numbered-item-weight', { code: receipt.code, ...what }) : say('item-weight', what)}
      hint={say(becameOf(receipt?.decision))}
    >
      {verdict && <VerdictWords verdict={atTheDoor(verdict, say, receipt?.decision)} size="large" />}
      {receipt?.flags.map((flag) => (
        <p key={flag}>{say('remark', { remark: sayEntry(flag) })}</p>
      ))}
      <Row>
        {receipt?.deviationId && (
          <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId: receipt.deviationId }}>
            {say('corrective-action')}
          </LinkButton>
        )}
        <Button look={receipt?.deviationId ? 'plain' : 'primary'} onClick={onAnother}>
          {say('another')}
        </Button>
        <LinkButton to="/receiving">{sayShared('done')}</LinkButton>
      </Row>
    </Question>
  );
}

function becameOf(decision: 'accepted' | 'refused' | undefined) {
  if (decision === undefined) return 'kept-and-judged';
  return decision === 'accepted' ? 'write-number' : 'saved-refused';
}
