import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import type { Progress } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { Problem } from '../../../ui/problem';
import { Question } from '../../../ui/question';
import { Row } from '../../../ui/stack';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import { useClock, useSay } from '../../../ui/voice';
import { AcceptOrRefuse } from './accept-or-refuse';
import { atTheDoor, objectionTo, stepOf, verdictOf, type DeliveryDraft, type DeliveryStep } from './delivery-draft';
import { DeliverySummary } from './delivery-summary';
import { ReasonField } from './reason-field';
import { receivingRange } from './receiving-units';

type Decision = 'accepted' | 'refused';
type DecisionQuestionProps = {
  draft: DeliveryDraft;
  progress: Progress;
  /** Its time and reason outlive a step back. */
  onChange: (draft: DeliveryDraft) => void;
  onDecide: (decision: Decision, reason: string) => void;
  /** Opens the question where something is put right. */
  onStep: (step: DeliveryStep) => void;
};

export function DecisionQuestion({ draft, progress: { refused, busy }, onChange, onDecide, onStep }: DecisionQuestionProps) {
  const say = useSay('receiving');
  const { tell } = useTell();
  const sayShared = useSay('shared');
  const { zone } = useShop();
  const clock = useClock(zone);
  const objection = objectionTo(draft);
  const verdict = verdictOf(draft.item, draft.temperature);
  const [asking, setAsking] = useState<Decision>();
  const [isMissing, setIsMissing] = useState(false);
  const [isTiming, setIsTiming] = useState(false);
  const { came, reason = '' } = draft;

  const decide = (decision: Decision) => {
    const needsReason = decision === 'refused' || objection === 'needs a reason';
    setIsMissing(needsReason && reason.trim() === '');
    if (!needsReason || reason.trim() !== '') onDecide(decision, needsReason ? reason.trim() : '');
  };
  const time = () => {
    if (!isTiming) onChange({ ...draft, came: came || new Date().toISOString() }); // what stands in the field is what is recorded
    setIsTiming(!isTiming);
  };
  const accept = () => (objection === 'needs a reason' ? setAsking('accepted') : decide('accepted'));
  const wrongStep = refused && stepOf(refused.fields, refused.code);
  return (
    <Question title={say(verdict?.kind === 'missed' ? 'missed-refuse' : 'accept-question')} hint={say('look-too')}>
      <DeliverySummary
        draft={draft}
        came={
          <Button aria-expanded={isTiming} onClick={time}>
            {came === undefined ? say('just-now') : came === '' ? say('when-came') : say('at-time', { time: clock.time(Date.parse(came)) })}
          </Button>
        }
      />
      {isTiming && (
        <DateTimeField label={say('when-came')} zone={zone} value={came ?? ''} onChange={(at) => onChange({ ...draft, came: at })} />
      )}
      {verdict && <VerdictWords verdict={atTheDoor(tell(verdict, draft.item && receivingRange(draft.item)), say)} size="large" />}
      {asking && (
        <ReasonField
          decision={asking}
          value={reason}
          error={isMissing && reason.trim() === '' ? say('say-why') : undefined}
          onChange={(why) => onChange({ ...draft, reason: why })}
        />
      )}
      {refused && (
        <Problem error={{ title: refused.words }}>
          {wrongStep && <Button onClick={() => onStep(wrongStep)}>{sayShared('put-right')}</Button>}
        </Problem>
      )}
      {asking ? (
        <Row>
          <Button look="primary" busy={busy} onClick={() => decide(asking)}>
            {say(asking === 'refused' ? 'refuse-delivery' : 'accept-all-the-same')}
          </Button>
          <Button onClick={() => setAsking(undefined)}>{sayShared('cancel')}</Button>
        </Row>
      ) : (
        <AcceptOrRefuse
          objection={objection}
          busy={busy}
          onAccept={accept}
          onRefuse={() => setAsking('refused')}
          onMeasure={() => onStep('temperature')}
        />
      )}
    </Question>
  );
}
