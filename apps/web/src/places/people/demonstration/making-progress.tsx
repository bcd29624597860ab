import { useState } from 'react';
import { useNow } from '../../../ui/time-left';
import css from './demonstration.module.css';

/** The demonstration is being made: what is going on, and for how long. */
export function MakingProgress() {
  const [began] = useState(() => Date.now());
  const seconds = Math.max(0, Math.floor((useNow() - began) / 1000));
  return (
    <div className={css.making}>
      <p role="status"><strong>The demonstration shop is living its two months…</strong> Each delivery, lot, reading and shipment is sent through the same doors your own will use, and judged.</p>
      <p className={css.seconds}>{seconds} s so far. It usually takes less than a minute, and only the first time.</p>
      <div className={css.rules} aria-hidden="true"><i /><i /><i /></div>
    </div>
  );
}
