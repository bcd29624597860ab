import { Button } from '../../../ui/button';
import { Row, Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import type { objectionTo } from './delivery-draft';

type AcceptOrRefuseProps = {
  objection: ReturnType<typeof objectionTo>;
  busy: boolean;
  onAccept: () => void;
  onRefuse: () => void;
  onMeasure: () => void;
};

/** What was not measured cannot be accepted; what missed its limit needs a reason. */
export function AcceptOrRefuse({ objection, busy, onAccept, onRefuse, onMeasure }: AcceptOrRefuseProps) {
  const say = useSay('receiving');
  const needsReason = objection === 'needs a reason';
  return (
    <Stack gap="near">
      {objection === 'needs a temperature' && <p>{say('measure-first')}</p>}
      <Row>
        {objection === undefined && (
          <Button look="primary" busy={busy} onClick={onAccept}>
            {say('accept-delivery')}
          </Button>
        )}
        {objection === 'needs a temperature' && (
          <Button look="primary" onClick={onMeasure}>
            {say('measure')}
          </Button>
        )}
        <Button look={needsReason ? 'primary' : 'plain'} onClick={onRefuse}>
          {say('refuse')}
        </Button>
        {needsReason && <Button onClick={onAccept}>{say('accept-all-the-same-why')}</Button>}
      </Row>
    </Stack>
  );
}
