import type { Deviation } from '@larderbook/contracts';
import { LinkButton } from '../../ui/link-button';
import { MissedFrame } from '../../ui/missed-frame';
import { Section } from '../../ui/section';
import { Row, Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { subjectOf } from './subject';
import { Suspense } from 'react';
import { useAccount } from '../../ui/use-account';
import { useTell } from '../../ui/use-tell';

/** Product that left before its deviation was found stands first on the page. */
export function PossibleRecalls({ deviations }: { deviations: Deviation[] }) {
  const say = useSay('today');
  if (deviations.length === 0) return null;
  return (
    <Section title={say('possible-recalls', { count: deviations.length })}>
      <Stack>
        <Suspense fallback={null}>
          {deviations.map((deviation) => (
            <PossibleRecall key={deviation.deviationId} deviation={deviation} />
          ))}
        </Suspense>
      </Stack>
    </Section>
  );
}

function PossibleRecall({ deviation }: { deviation: Deviation }) {
  const say = useSay('today');
  const { deviationId, lot, receipt, controlPoint, description, limit } = deviation;
  const { tell } = useTell();
  const tellAccount = useAccount();
  const verdict = deviation.verdict && tell(deviation.verdict, limit);
  const subject = subjectOf(deviation, say);
  const nodeId = lot?.lotId ?? receipt?.receiptId;
  return (
    <MissedFrame
      what={controlPoint ? say('point-shipped-already', { point: controlPoint.name, subject }) : say('shipped-already', { subject })}
      measured={verdict?.measured ?? say('unforeseen')}
      limit={verdict?.limit ?? say('none-set')}
      by={verdict?.margin}
      because={tellAccount(description)}
    >
      <Row>
        <LinkButton look="primary" to="/deviations/$deviationId" params={{ deviationId }}>
          {say('open-deviation')}
        </LinkButton>
        {nodeId && (
          <LinkButton to="/trace/$nodeId" params={{ nodeId }}>
            {say('find-packages')}
          </LinkButton>
        )}
      </Row>
    </MissedFrame>
  );
}
