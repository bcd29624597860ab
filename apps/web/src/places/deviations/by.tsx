import { useShop } from '../../api/use-shop';
import { BothMoments } from '../../ui/moment';
import css from './deviations.module.css';

export function By({ name, at, recordedAt = at }: { name: string; at: string; recordedAt?: string }) {
  const { zone } = useShop();
  return (
    <span className={css.by}>
      {name}, <BothMoments at={at} recordedAt={recordedAt} zone={zone} />
    </span>
  );
}
