import { sayPercent } from '@larderbook/haccp';
import type { CSSProperties } from 'react';
import { dayWords } from '../../../ui/moment';
import { useNameOnPaper } from '../../../ui/use-name-on-paper';
import { wallTime } from '../../../ui/wall-time';
import { useShop } from '../../../api/use-shop';
import css from './kitchen-sheet.module.css';
import { sayAllowed, sayOwn, sayToWeigh } from './say-amounts';
import { toWeigh } from './to-weigh';
import type { Batch } from './weighing-sheet';

type KitchenSheetProps = { batch: Batch; product: string; formula: number; at: number };

/** The weighing sheet on paper, one page: what to weigh, between what, and room to write what was weighed, and by whom. */
export function KitchenSheet({ batch, product, formula, at }: KitchenSheetProps) {
  const { establishment, zone, heavy, light } = useShop();
  useNameOnPaper(product, 'weighing sheet', wallTime(at, zone).slice(0, 10));
  const allowed = new Map(batch.doses.map((dose) => [dose.itemName, dose]));
  return (
    <article className={css.sheet} aria-label="Weighing sheet" style={{ '--rows': batch.lines.length } as CSSProperties}>
      <header className={css.head}>
        <p className={css.shop}>{establishment}</p>
        <h2 className={css.product}>{product}</h2>
        <p>
          Formula {formula}. Worked out {dayWords(at, zone)}. Not a record.
        </p>
        <p>
          Trimmed meat <strong>{sayOwn(batch.meatGrams, heavy, light)}</strong>. Everything that goes in{' '}
          {sayOwn(batch.totalGrams, heavy, light)}. Packed, as expected {sayOwn(batch.expectedPackedGrams, heavy, light)}.
        </p>
      </header>
      <dl className={css.blanks}>
        {['Lot', 'Made on', 'Trimmed meat, weighed', 'Scale'].map((blank) => (
          <Blank key={blank} name={blank} />
        ))}
      </dl>
      <table className={css.table}>
        <caption className={css.caption}>To be weighed</caption>
        <thead>
          <tr>
            {['What', 'Percent', 'To weigh', 'Least', 'Most', 'Weighed', 'Initials'].map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {batch.lines
            .map((line) => toWeigh(line, batch))
            .map(({ itemName, percent, grams, inward }) => (
              <tr key={itemName}>
                <th scope="row">{itemName}</th>
                <td>{sayPercent(percent)}</td>
                <td className={css.toWeigh}>{sayToWeigh(grams, heavy, inward)}</td>
                <td>{sayAllowed(allowed.get(itemName)?.minGrams, 'up')}</td>
                <td>{sayAllowed(allowed.get(itemName)?.maxGrams, 'down')}</td>
                <td className={css.room} />
                <td className={css.room} />
              </tr>
            ))}
        </tbody>
      </table>
      <p className={css.foot}>
        {batch.doses.length > 0 && 'Curing salts are toxic in excess: never weigh more than the most. '}
        What counts is weighed into the lot and judged there, against the meat as it was trimmed.
      </p>
    </article>
  );
}

function Blank({ name }: { name: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd />
    </div>
  );
}
