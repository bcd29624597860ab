import { standings } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';
import { Status } from '../../../ui/status';
import { useAccount } from '../../../ui/use-account';
import { useSay } from '../../../ui/voice';
import type { Packing } from './packing';
import { isPast } from './use-by';
import css from './stock.module.css';

/** Packages past their use-by may ship, but not without a thought. */
export function MayShip({ packing: { mayShip, standing, because, useBy }, today }: { packing: Packing; today: string }) {
  const say = useSay('shipping');
  const sayLots = useSay('lots');
  const tell = useAccount();
  if (mayShip && !isPast(useBy, today)) return <Status state="met" word={say('may-ship')} />;
  return (
    <>
      <Status
        state={mayShip || standing === 'on-hold' ? 'missed' : 'undetermined'}
        word={say(mayShip ? 'past-use-by' : 'may-not-ship')}
        margin={standingName(standing, sayLots)}
      />
      <span className={css.small}>{mayShip ? say('decide-before') : tell(because)}</span>
    </>
  );
}

/** A standing of a newer server is said as it comes. */
const standingName = (standing: string, say: SayOf<'lots'>): string => {
  const known = standings.find((each) => each === standing);
  return known ? say(`standing-${known}`) : standing;
};
