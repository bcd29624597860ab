import type { ControlPoint } from '@larderbook/contracts';
import { isUnconfirmed, type TemperatureUnit } from '@larderbook/haccp';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import css from './recording.module.css';

export function LimitsOfPoint({ point, unit }: { point: ControlPoint; unit: TemperatureUnit }) {
  const say = useSay('lot-forms');
  const { sayInShort } = useLimits();
  return (
    <span className={css.limits}>
      {point.limits.map(({ limitId, limit }) => (
        <span key={limitId}>
          {sayInShort(limit, unit)}
          {isUnconfirmed(limit.source) && <small>{say('not-confirmed')}</small>}
        </span>
      ))}
    </span>
  );
}
