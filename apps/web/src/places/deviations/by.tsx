import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import css from './deviations.module.css';

/** Under whose name it is, and when. */
export function By({ name, at }: { name: string; at: string }) {
  const { zone } = useShop();
  return (
    <span className={css.by}>
      {name}, <Moment at={at} zone={zone} />
    </span>
  );
}
