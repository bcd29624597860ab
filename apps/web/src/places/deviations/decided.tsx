import type { Deviation, Disposition } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Row } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { By } from './by';
import { CorrectDecided } from './correct-decided';
import { Destroy } from './destroy';
import { Destroyed } from './destroyed';
import css from './deviations.module.css';
import { Struck } from './struck';
import { VoidDecided } from './void-decided';
import { weightOf } from './weights';

/** A decision that no longer counts is struck through, with why. */
export function Decided({ disposition, of }: { disposition: Disposition; of: Deviation }) {
  const say = useSay('settling');
  const { roles, mayRecord } = useShop();
  const [doing, setDoing] = useState<'destroy' | 'correct' | 'void'>();
  const { decision, weight, code, basis, reason, speaksFor, by, at, toDestroy, destruction, voided } = disposition;
  const what = say(`${decision}-saved`, { weight: weightOf(weight) });
  const stop = () => setDoing(undefined);
  const mayChange = !voided && !destruction && roles.some((role) => role === 'owner' || role === 'reviewer');
  const others = speaksFor.filter(({ deviationId }) => deviationId !== of.deviationId);
  return (
    <li>
      <p>
        <strong>{voided ? <s>{what}</s> : what}</strong>
        {` · ${code}`}
      </p>
      {basis && <p>{say('basis-is', { basis: say(codeOf('basis', basis)) })}</p>}
      <p className={css.said}>{reason}</p>
      {others.length > 0 && (
        <p className={css.by}>{say('also-for', { count: others.length, numbers: others.map(({ number }) => String(number)) })}</p>
      )}
      <By name={by} at={at} />
      {voided && <Struck {...voided} />}
      <Destroyed disposition={disposition} />
      {toDestroy && (
        <div className={css.toDestroy}>
          <strong>{say('not-destroyed')}</strong>
          {mayRecord && <Button onClick={() => setDoing('destroy')}>{say('record-destruction')}</Button>}
        </div>
      )}
      {mayChange && (
        <Row>
          <Button look="quiet" onClick={() => setDoing('correct')}>
            {say('correct-decision')}
          </Button>
          <Button look="quiet" onClick={() => setDoing('void')}>
            {say('void-decision')}
          </Button>
        </Row>
      )}
      {doing === 'destroy' && <Destroy disposition={disposition} onClose={stop} />}
      {doing === 'correct' && <CorrectDecided deviation={of} disposition={disposition} said={what} onClose={stop} />}
      {doing === 'void' && <VoidDecided what="disposition" amends={disposition.dispositionId} said={what} onClose={stop} />}
    </li>
  );
}
