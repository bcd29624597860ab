import { massIn } from '@larderbook/haccp';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { StateMark } from '../../../ui/status';
import { useFigures, useSay } from '../../../ui/voice';
import { loadCount, loadGrams, type LoadLine } from './load';
import css from './ship.module.css';

type LoadListProps = { load: LoadLine[]; problems?: ReadonlyMap<string, string>; onChange?: (line: LoadLine) => void };

export function LoadList({ load, problems, onChange }: LoadListProps) {
  const say = useSay('shipping');
  const sayShared = useSay('shared');
  const { number, quantity } = useFigures();
  const { units } = useShop();
  const inAll = loadCount(load);
  return (
    <ul className={css.load} aria-label={say('load')} data-fixed={onChange ? undefined : true}>
      {load.map((line) => {
        const {
          packing: { packingId, code, productName, net },
          count,
        } = line;
        const problem = problems?.get(packingId);
        return (
          <li key={packingId} className={css.line} data-wrong={problem ? true : undefined}>
            <strong className={css.count}>{number(count)} ×</strong>
            <span>
              {productName}
              <small>{say('code-each', { code, weight: quantity(net) })}</small>
            </span>
            <span className={css.weight}>{quantity(massIn(units, net.grams * count))}</span>
            {onChange && (
              <Button aria-label={say('change-code', { code })} onClick={() => onChange(line)}>
                {sayShared('change')}
              </Button>
            )}
            {problem && (
              <p className={css.problem} role="alert">
                <StateMark state="missed" /> {problem}
              </p>
            )}
          </li>
        );
      })}
      <li className={css.sum}>
        <strong className={css.count}>{number(inAll)}</strong>
        <span>{say('packages-in-all', { count: inAll })}</span>
        <strong className={css.weight}>{quantity(massIn(units, loadGrams(load)))}</strong>
      </li>
    </ul>
  );
}
