import type { Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Row } from '../../ui/stack';
import { WhyDialog } from '../../ui/why-dialog';
import { useSay } from '../../ui/voice';
import { By } from './by';
import { Destroy } from './destroy';
import { Struck } from './struck';
import { VoidDecided } from './void-decided';
import { weightOf } from './weights';

export function Destroyed({ disposition }: { disposition: Disposition }) {
  const say = useSay('settling');
  const sayShared = useSay('shared');
  const { mayRecord } = useShop();
  const [doing, setDoing] = useState<{ do: 'correct' | 'void'; of: NonNullable<Disposition['destruction']> }>();
  const [reason, setReason] = useState<string>();
  const { destruction, voidedDestructions, weight } = disposition;
  const said = say('destruction-of', { weight: weightOf(weight) });
  const stop = () => {
    setDoing(undefined);
    setReason(undefined);
  };
  return (
    <>
      {voidedDestructions.map(({ destructionId, method, at, voided }) => (
        <div key={destructionId}>
          <p>
            <s>{say('was-destroyed', { when: { at }, how: method })}</s>
          </p>
          <Struck {...voided} />
        </div>
      ))}
      {destruction && (
        <p>
          {say('was-destroyed', { when: { at: destruction.at }, how: destruction.method })}{' '}
          <By name={destruction.by} at={destruction.at} recordedAt={destruction.recordedAt} />
        </p>
      )}
      {mayRecord && destruction && (
        <Row>
          <Button look="quiet" onClick={() => setDoing({ do: 'correct', of: destruction })}>
            {say('correct-destruction')}
          </Button>
          <Button look="quiet" onClick={() => setDoing({ do: 'void', of: destruction })}>
            {say('void-destruction-button')}
          </Button>
        </Row>
      )}
      {doing?.do === 'correct' && !reason && (
        <WhyDialog
          title={say('correct-what', { what: said })}
          usual="to-correct"
          verb={sayShared('next')}
          onReason={setReason}
          onClose={stop}
        >
          <p>{say('why-corrected')}</p>
        </WhyDialog>
      )}
      {doing?.do === 'correct' && reason && <Destroy disposition={disposition} amending={{ ...doing.of, reason }} onClose={stop} />}
      {doing?.do === 'void' && <VoidDecided what="destruction" amends={doing.of.destructionId} said={said} onClose={stop} />}
    </>
  );
}
