import type { Deviation } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { MissedFrame } from '../../ui/missed-frame';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { saySubject } from './deviation-line';

/** Product that left before its deviation was found: first on the page, with the way to every package of it. */
export function PossibleRecalls({ deviations }: { deviations: Deviation[] }) {
  if (deviations.length === 0) return null;
  return (
    <Section title={deviations.length === 1 ? 'A possible recall' : `${deviations.length} possible recalls`}>
      <Stack>
        {deviations.map((deviation) => (
          <PossibleRecall key={deviation.deviationId} deviation={deviation} />
        ))}
      </Stack>
    </Section>
  );
}

function PossibleRecall({ deviation }: { deviation: Deviation }) {
  const { deviationId, lot, receipt, controlPoint, description, verdict } = deviation;
  const nodeId = lot?.lotId ?? receipt?.receiptId;
  return (
    <MissedFrame
      what={[controlPoint?.name, saySubject(deviation), 'shipped already'].filter(Boolean).join(', ')}
      measured={verdict?.measured ?? 'unforeseen'}
      limit={verdict?.limit ?? 'none set'}
      by={verdict?.margin}
      because={description}
    >
      <Row>
        <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId }}>
          Open the deviation
        </LinkButton>
        {nodeId && (
          <LinkButton to="/trace/$nodeId" params={{ nodeId }}>
            Find every package
          </LinkButton>
        )}
      </Row>
    </MissedFrame>
  );
}
