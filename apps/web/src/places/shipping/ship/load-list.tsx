import { sayGrams } from '../../../api/say-grams';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { StateMark } from '../../../ui/status';
import { loadCount, loadGrams, type LoadLine } from './load';
import css from './ship.module.css';

type LoadListProps = { load: LoadLine[]; problems?: ReadonlyMap<string, string>; onChange?: (line: LoadLine) => void };

/** The load so far: each run on its rule, with what stands in its way beside it, and the sum. */
export function LoadList({ load, problems, onChange }: LoadListProps) {
  const { units } = useShop();
  return (
    <ul className={css.load} aria-label="The load" data-fixed={onChange ? undefined : true}>
      {load.map((line) => {
        const {
          packing: { packingId, code, productName, net },
          count,
        } = line;
        const problem = problems?.get(packingId);
        return (
          <li key={packingId} className={css.line} data-wrong={problem ? true : undefined}>
            <strong className={css.count}>{count} ×</strong>
            <span>
              {productName}
              <small>
                {code}, {net.value} {net.unit} each
              </small>
            </span>
            <span className={css.weight}>{sayGrams(net.grams * count, units)}</span>
            {onChange && (
              <Button aria-label={`Change ${code}`} onClick={() => onChange(line)}>
                Change
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
        <strong className={css.count}>{loadCount(load)}</strong>
        <span>{loadCount(load) === 1 ? 'package' : 'packages'} in all</span>
        <strong className={css.weight}>{sayGrams(loadGrams(load), units)}</strong>
      </li>
    </ul>
  );
}
