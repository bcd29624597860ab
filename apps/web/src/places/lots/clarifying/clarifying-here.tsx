import { showLot } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { ask } from '../../../api/ask';
import { useShop } from '../../../api/use-shop';
import { useOutbox } from '../../../outbox/use-outbox';
import { withUnsent } from '../preview/with-unsent';
import { Clarify } from './clarify';
import { InDoubt } from './in-doubt';
import type { ToClarify } from './to-clarify';
import { WhatWasSaid } from './what-was-said';

export function ClarifyingHere({ lotId, controlPointId }: { lotId: string; controlPointId: string }) {
  const { mayRecord } = useShop();
  const { data: lot } = useQuery(ask(showLot, { lotId }));
  const { waiting } = useOutbox();
  const [clarifying, setClarifying] = useState<ToClarify>();
  const point = lot?.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === controlPointId);
  if (!lot || !point) return null;
  const onClarify = mayRecord ? setClarifying : undefined;
  return (
    <>
      <InDoubt points={[point]} onClarify={onClarify} />
      <WhatWasSaid point={point} onClarify={onClarify} />
      {clarifying && <Clarify lot={withUnsent(lot, waiting)} of={clarifying} onClose={() => setClarifying(undefined)} />}
    </>
  );
}
