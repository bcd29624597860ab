import { useEffect, useState } from 'react';
import css from './loading.module.css';
import { useSay } from './voice';

const delayMs = 300;

/** Nothing is shown before 300 ms. */
export function Loading() {
  const say = useSay('shared');
  const [late, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), delayMs);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div className={css.loading} role="status">
      {late && <p>{say('loading')}</p>}
      {late && (
        <div className={css.rules} aria-hidden="true">
          <i />
          <i />
          <i />
        </div>
      )}
    </div>
  );
}
