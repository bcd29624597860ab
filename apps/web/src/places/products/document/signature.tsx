import type { Plan } from '@larderbook/contracts';

import css from './signature.module.css';
import { useClock, useSay } from '../../../ui/voice';

export function Signature({ plan }: { plan: Plan }) {
  const clock = useClock();
  const say = useSay('plans');
  const { version, statement, adoptedAt, adoptedBy, recordedAt, recordedBy, inForce } = plan;

  return (
    <div className={css.signature}>
      {adoptedAt ? (
        <>
          <blockquote className={css.statement}>{statement}</blockquote>
          <p className={css.line}>
            <strong>{adoptedBy}</strong>
            <span>{clock.dayAndTime(Date.parse(adoptedAt))}</span>
          </p>
          {inForce ? <p className={css.small}>{say('holds-until')}</p> : <p className={css.small}>{say('place-taken')}</p>}
        </>
      ) : (
        <p>{say('nobody-signed', { version })}</p>
      )}
      <p className={css.small}>{say('written-by', { who: recordedBy, at: { at: recordedAt } })}</p>
    </div>
  );
}
