import { useId } from 'react';
import { sayProbe } from '../say/say-entered';
import css from './recording.module.css';

type ProbeChoiceProps = { probes: string[]; probe: string; onChoose: (probe: string) => void };

/** Which of several probes was read; the one whose turn it is stands chosen. */
export function ProbeChoice({ probes, probe, onChoose }: ProbeChoiceProps) {
  const name = useId();
  return (
    <fieldset className={css.probes} aria-label="Probe">
      {probes.map((each) => (
        <label key={each} className={css.probe}>
          <input type="radio" name={name} checked={each === probe} onChange={() => onChoose(each)} />
          {sayProbe(each)}
        </label>
      ))}
    </fieldset>
  );
}
