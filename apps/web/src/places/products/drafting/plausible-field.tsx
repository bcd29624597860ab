import { useState } from 'react';
import { NumberField } from '../../../ui/number-field';
import limits from '../limits/limits.module.css';
import { useShop } from '../../../api/use-shop';
import { plausibleRange, rangeText, type Plausible, type RangeText } from './plausible-range';
import { useSay } from '../../../ui/voice';

type PlausibleFieldProps = { value: Plausible | undefined; onChange: (value: Plausible | undefined) => void };

/** A reading outside is asked about, as when 151.5 is typed where °C is set. */
export function PlausibleField({ value, onChange }: PlausibleFieldProps) {
  const say = useSay('plan-points');
  const { degrees } = useShop();
  const [text, setText] = useState<RangeText>(() => rangeText(value, degrees));
  const type = (next: RangeText) => {
    setText(next);
    onChange(plausibleRange(next, degrees));
  };
  const isHalf = plausibleRange(text, degrees) === undefined && (text.least !== '' || text.most !== '');
  return (
    <fieldset className={limits.group}>
      <legend className={limits.legend}>{say('plausible')}</legend>
      <p className={limits.hint}>{say('plausible-hint')}</p>
      <div className={limits.pair}>
        <NumberField label={say('from')} belowZero unit={degrees} value={text.least} onChange={(least) => type({ ...text, least })} />
        <NumberField
          label={say('to')}
          belowZero
          unit={degrees}
          value={text.most}
          error={isHalf ? say('both-ends') : undefined}
          onChange={(most) => type({ ...text, most })}
        />
      </div>
    </fieldset>
  );
}
