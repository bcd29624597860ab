import { demonstrationProgress } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../../api/ask';
import css from './demonstration.module.css';

const aSecond = 1000;

/** The demonstration is being made: what is going on, and how much of it is done. */
export function MakingProgress() {
  const { data } = useQuery({ ...ask(demonstrationProgress, {}), refetchInterval: aSecond });
  const isTold = data !== undefined && data.all > 0;
  return (
    <div className={css.making}>
      <p role="status">
        <strong>The demonstration shop is living its two months.</strong> Each delivery, lot, reading and shipment is sent through the same
        doors your own will use, and judged.
      </p>
      <progress
        className={css.progress}
        aria-label="Entries of the demonstration"
        value={isTold ? data.done : undefined}
        max={isTold ? data.all : undefined}
      />
      <p className={css.done}>
        {isTold ? `${say(data.done)} of ${say(data.all)} entries. Only the first time.` : 'Its suppliers, products and plans come first.'}
      </p>
    </div>
  );
}

const say = (count: number): string => count.toLocaleString('en-US');
