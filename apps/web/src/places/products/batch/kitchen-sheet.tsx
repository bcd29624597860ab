import type { Rounding } from '@larderbook/haccp';
import { percentFigure } from '../../../ui/percent-figure';
import type { CSSProperties } from 'react';

import { useNameOnPaper } from '../../../ui/use-name-on-paper';
import { wallTime } from '../../../ui/wall-time';
import { useShop } from '../../../api/use-shop';
import css from './kitchen-sheet.module.css';
import { allowedFigure, ownFigure, toWeighIn } from './amounts';
import { toWeigh } from './to-weigh';
import type { Batch } from './weighing-sheet';
import { useSay, useFigures } from '../../../ui/voice';

type KitchenSheetProps = { batch: Batch; product: string; formula: number; at: number };

/** One page, with room to write what was weighed and by whom. */
export function KitchenSheet({ batch, product, formula, at }: KitchenSheetProps) {
  const say = useSay('batches');
  const { establishment, zone, heavy, light } = useShop();
  const { quantity } = useFigures();
  const day = wallTime(at, zone).slice(0, 10);
  const own = (grams: number) => ownFigure(grams, heavy, light);
  const limitOf = (grams: number | undefined, inward: Rounding) => (grams === undefined ? '' : quantity(allowedFigure(grams, inward)));
  useNameOnPaper(product, say('sheet-name'), day);
  const allowed = new Map(batch.doses.map((dose) => [dose.itemName, dose]));
  return (
    <article className={css.sheet} aria-label={say('weighing-sheet')} style={{ '--rows': batch.lines.length } as CSSProperties}>
      <header className={css.head}>
        <p className={css.shop}>{establishment}</p>
        <h2 className={css.product}>{product}</h2>
        <p>{say('calculated-on', { version: formula, day: { day } })}</p>
        <p>
          <strong>{say('meat-of', { weight: own(batch.meatGrams) })}</strong>{' '}
          {say('in-and-out', { all: own(batch.totalGrams), packed: own(batch.expectedPackedGrams) })}
        </p>
      </header>
      <dl className={css.blanks}>
        {(['blank-lot', 'blank-made', 'blank-meat', 'blank-scale'] as const).map((blank) => (
          <Blank key={blank} name={say(blank)} />
        ))}
      </dl>
      <table className={css.table}>
        <caption className={css.caption}>{say('to-be-weighed')}</caption>
        <thead>
          <tr>
            {(['what', 'percent', 'to-weigh', 'least', 'most', 'weighed', 'initials'] as const).map((head) => (
              <th key={head} scope="col">
                {say(head)}
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
                <td>{quantity(percentFigure(percent))}</td>
                <td className={css.toWeigh}>
                  {toWeighIn(grams, heavy, inward)
                    .map((figures) => figures.map(quantity).join(' '))
                    .join(' = ')}
                </td>
                <td>{limitOf(allowed.get(itemName)?.minGrams, 'up')}</td>
                <td>{limitOf(allowed.get(itemName)?.maxGrams, 'down')}</td>
                <td className={css.room} />
                <td className={css.room} />
              </tr>
            ))}
        </tbody>
      </table>
      <p className={css.foot}>
        {batch.doses.length > 0 && `${say('never-more')} `}
        {say('what-counts')}
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
