import { useEffect, useState } from 'react';
import css from './loading.module.css';

const patienceMs = 300;

/** Says what is being fetched, but only once it takes longer than 300 ms. */
export function Loading({ what }: { what: string }) {
  const [late, setLate] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setLate(true), patienceMs);
    return () => clearTimeout(timer);
  }, []);
  return (
    <div className={css.loading} role="status">
      {late && <p>Fetching {what}…</p>}
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
