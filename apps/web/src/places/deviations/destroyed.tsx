import type { Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Moment } from '../../ui/moment';
import { Row } from '../../ui/stack';
import { WhyDialog } from '../../ui/why-dialog';
import { By } from './by';
import { Destroy } from './destroy';
import { Struck } from './struck';
import { VoidDecided } from './void-decided';
import { sayWeight } from './weights';

/** How condemned product was destroyed, and what was written of it that counts no more. */
export function Destroyed({ disposition }: { disposition: Disposition }) {
  const { zone, mayRecord } = useShop();
  const [doing, setDoing] = useState<{ do: 'correct' | 'void'; of: NonNullable<Disposition['destruction']> }>();
  const [reason, setReason] = useState<string>();
  const { destruction, voidedDestructions, weight } = disposition;
  const said = `Destruction of ${sayWeight(weight)}`;
  const stop = () => {
    setDoing(undefined);
    setReason(undefined);
  };
  return (
    <>
      {voidedDestructions.map(({ destructionId, method, at, voided }) => (
        <div key={destructionId}>
          <p>
            <s>
              Destroyed <Moment at={at} zone={zone} />: {method}
            </s>
          </p>
          <Struck {...voided} />
        </div>
      ))}
      {destruction && (
        <p>
          <strong>Destroyed</strong> <Moment at={destruction.at} zone={zone} />: {destruction.method}{' '}
          <By name={destruction.by} at={destruction.at} recordedAt={destruction.recordedAt} />
        </p>
      )}
      {mayRecord && destruction && (
        <Row>
          <Button look="quiet" onClick={() => setDoing({ do: 'correct', of: destruction })}>
            Correct its destruction
          </Button>
          <Button look="quiet" onClick={() => setDoing({ do: 'void', of: destruction })}>
            Void its destruction
          </Button>
        </Row>
      )}
      {doing?.do === 'correct' && !reason && (
        <WhyDialog title={`Correct: ${said}`} usual="to-correct" verb="Next" onReason={setReason} onClose={stop}>
          <p>Why is it corrected? What was written stays here, struck through, with this reason.</p>
        </WhyDialog>
      )}
      {doing?.do === 'correct' && reason && <Destroy disposition={disposition} amending={{ ...doing.of, reason }} onClose={stop} />}
      {doing?.do === 'void' && <VoidDecided what="destruction" amends={doing.of.destructionId} said={said} onClose={stop} />}
    </>
  );
}
