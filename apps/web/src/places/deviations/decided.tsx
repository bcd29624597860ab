import type { Deviation, Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Row } from '../../ui/stack';
import { By } from './by';
import { CorrectDecided } from './correct-decided';
import { basisWords, decisionWords } from './decision-words';
import { Destroy } from './destroy';
import { Destroyed } from './destroyed';
import css from './deviations.module.css';
import { Struck } from './struck';
import { VoidDecided } from './void-decided';
import { sayWeight } from './weights';

/** One decision with what came of it; one that counts no more is struck through, with why. */
export function Decided({ disposition, of }: { disposition: Disposition; of: Deviation }) {
  const { roles, mayRecord } = useShop();
  const [doing, setDoing] = useState<'destroy' | 'correct' | 'void'>();
  const { decision, weight, code, basis, reason, speaksFor, by, at, toDestroy, destruction, voided } = disposition;
  const what = `${sayWeight(weight)} ${decisionWords[decision].saved}`;
  const stop = () => setDoing(undefined);
  const mayChange = !voided && !destruction && roles.some((role) => role === 'owner' || role === 'reviewer');
  const others = speaksFor.filter(({ deviationId }) => deviationId !== of.deviationId);
  return (
    <li>
      <p>
        <strong>{voided ? <s>{what}</s> : what}</strong>
        {` · ${code}`}
      </p>
      {basis && <p>Basis: {basisWords[basis].title}.</p>}
      <p className={css.said}>{reason}</p>
      {others.length > 0 && <p className={css.by}>Also for {others.map(({ number }) => `deviation ${number}`).join(', ')}</p>}
      <By name={by} at={at} />
      {voided && <Struck {...voided} />}
      <Destroyed disposition={disposition} />
      {toDestroy && (
        <div className={css.toDestroy}>
          <strong>Not destroyed yet: keep it apart.</strong>
          {mayRecord && <Button onClick={() => setDoing('destroy')}>Record its destruction</Button>}
        </div>
      )}
      {mayChange && (
        <Row>
          <Button look="quiet" onClick={() => setDoing('correct')}>
            Correct this decision
          </Button>
          <Button look="quiet" onClick={() => setDoing('void')}>
            Void this decision
          </Button>
        </Row>
      )}
      {doing === 'destroy' && <Destroy disposition={disposition} onClose={stop} />}
      {doing === 'correct' && <CorrectDecided deviation={of} disposition={disposition} said={what} onClose={stop} />}
      {doing === 'void' && <VoidDecided what="disposition" amends={disposition.dispositionId} said={what} onClose={stop} />}
    </li>
  );
}
