import { standings, standingWords } from '@larderbook/contracts';
import { Status } from '../../../ui/status';
import type { Packing } from './packing';
import { sayUseBy } from './say-use-by';
import css from './stock.module.css';

/** Where the lot of some packages stands in words, and why they may not ship, or should not without a thought. */
export function MayShip({ packing: { mayShip, standing, because, useBy }, today }: { packing: Packing; today: string }) {
  const isPast = sayUseBy(useBy, today).past;
  if (mayShip && !isPast) return <Status state="met" word="May ship" />;
  return (
    <>
      <Status
        state={mayShip || standing === 'on-hold' ? 'missed' : 'undetermined'}
        word={mayShip ? 'Past its use-by' : 'May not ship'}
        margin={sayStanding(standing)}
      />
      <span className={css.small}>{mayShip ? 'Decide what becomes of it before it leaves.' : because}</span>
    </>
  );
}

/** What a newer server calls a standing is said as it comes. */
const sayStanding = (standing: string): string => {
  const known = standings.find((each) => each === standing);
  return known ? standingWords[known] : standing;
};
