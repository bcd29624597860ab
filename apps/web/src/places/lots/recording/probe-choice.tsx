import type { ControlPoint } from '@larderbook/contracts';
import { useSay } from '../../../ui/voice';
import { useId } from 'react';
import { probeName } from '../say/entered';
import css from './recording.module.css';

type ProbeChoiceProps = { point: ControlPoint; probe: string; onChoose: (probe: string) => void };

export function ProbeChoice({ point: { probes, surroundings }, probe, onChoose }: ProbeChoiceProps) {
  const say = useSay('lot-forms');
  const sayEntry = useSay('entries');
  const name = useId();
  const choices = surroundings ? [...(probes.length > 0 ? probes : ['']), surroundings.name] : probes;
  if (choices.length < 2) return null;
  return (
    <fieldset className={css.probes} aria-label={say('probe')}>
      {choices.map((each) => (
        <label key={each} className={css.probe}>
          <input type="radio" name={name} checked={each === probe} onChange={() => onChoose(each)} />
          {probeName(each, sayEntry) || say('in-product')}
        </label>
      ))}
    </fieldset>
  );
}
