import { useState, type ReactNode } from 'react';
import { useShop } from '../../../api/use-shop';
import type { Refused } from '../../../outbox/use-recording';
import { Button } from '../../../ui/button';
import { DateTimeField } from '../../../ui/date-time-field';
import { Facts } from '../../../ui/facts';
import { timeWords } from '../../../ui/moment';
import { Problem } from '../../../ui/problem';
import { Question } from '../../../ui/question';
import { Row, Stack } from '../../../ui/stack';
import { VerdictWords } from '../../../ui/verdict-words';
import { sayEntered } from '../deliveries/say-receipt';
import { atTheDoor, objectionTo, stepOf, verdictOf, type DeliveryDraft, type DeliveryStep } from './delivery-draft';
import { ReasonField } from './reason-field';

type Decision = 'accepted' | 'refused';
type DecisionQuestionProps = {
  draft: DeliveryDraft;
  refused?: Refused;
  busy: boolean;
  onDecide: (decision: Decision, reason: string, takenAt: string) => void;
  /** Back to the question where something is put right. */
  onStep: (step: DeliveryStep) => void;
};

/** Accept or refuse; a refusal, and taking what missed its limit, need a word why. */
export function DecisionQuestion({ draft, refused, busy, onDecide, onStep }: DecisionQuestionProps) {
  const { zone } = useShop();
  const objection = objectionTo(draft);
  const verdict = verdictOf(draft.item, draft.temperature);
  const [asking, setAsking] = useState<Decision>();
  const [reason, setReason] = useState('');
  const [isMissing, setIsMissing] = useState(false);
  const [takenAt, setTakenAt] = useState('');
  const [isTiming, setIsTiming] = useState(false);
  const [now] = useState(() => new Date().toISOString());

  const decide = (decision: Decision) => {
    const needsReason = decision === 'refused' || objection === 'needs a reason';
    setIsMissing(needsReason && reason.trim() === '');
    if (!needsReason || reason.trim() !== '') onDecide(decision, needsReason ? reason.trim() : '', takenAt || new Date().toISOString());
  };
  const accept = () => (objection === 'needs a reason' ? setAsking('accepted') : decide('accepted'));
  const wrongStep = refused && stepOf(refused.fields, refused.code);
  return (
    <Question
      title={verdict?.kind === 'missed' ? 'It missed its limit. Refuse it?' : 'Is it taken?'}
      hint="Look at packaging, labels, smell and the truck too."
    >
      <Summary
        draft={draft}
        came={
          <Button aria-expanded={isTiming} onClick={() => setIsTiming(!isTiming)}>
            {takenAt ? `at ${timeWords(takenAt, zone)}` : 'just now'}
          </Button>
        }
      />
      {isTiming && <DateTimeField label="When did it come?" zone={zone} value={takenAt || now} onChange={setTakenAt} />}
      {verdict && <VerdictWords verdict={atTheDoor(verdict)} size="large" />}
      {asking && (
        <ReasonField
          decision={asking}
          value={reason}
          error={isMissing && reason.trim() === '' ? 'Say why.' : undefined}
          onChange={setReason}
        />
      )}
      {refused && (
        <Problem error={{ title: refused.words }}>{wrongStep && <Button onClick={() => onStep(wrongStep)}>Put it right</Button>}</Problem>
      )}
      {asking ? (
        <Row>
          <Button look="primary" busy={busy} onClick={() => decide(asking)}>
            {asking === 'refused' ? 'Refuse the delivery' : 'Accept it all the same'}
          </Button>
          <Button onClick={() => setAsking(undefined)}>Not so</Button>
        </Row>
      ) : (
        <Stack gap="near">
          {objection === 'needs a temperature' && <p>It is received by temperature, so it can only be accepted once it is measured.</p>}
          <Row>
            {objection === undefined && (
              <Button look="primary" busy={busy} onClick={accept}>
                Accept the delivery
              </Button>
            )}
            {objection === 'needs a temperature' && (
              <Button look="primary" onClick={() => onStep('temperature')}>
                Measure it
              </Button>
            )}
            <Button look={objection === 'needs a reason' ? 'primary' : 'plain'} onClick={() => setAsking('refused')}>
              Refuse…
            </Button>
            {objection === 'needs a reason' && <Button onClick={accept}>Accept it all the same…</Button>}
          </Row>
        </Stack>
      )}
    </Question>
  );
}

function Summary({ draft: { item, supplier, label, weight, temperature }, came }: { draft: DeliveryDraft; came: ReactNode }) {
  return (
    <Facts
      facts={[
        { name: 'Item', value: item?.name },
        { name: 'Weight', value: weight && sayEntered(weight) },
        { name: 'Supplier', value: supplier?.name },
        { name: 'Their lot', value: label.supplierLot },
        ...(item?.substance ? [{ name: item.substance, value: `${label.fraction} %` }] : []),
        ...(temperature ? [{ name: 'Temperature', value: temperature === 'none' ? 'not measured' : sayEntered(temperature) }] : []),
        { name: 'Came', value: came },
      ]}
    />
  );
}
