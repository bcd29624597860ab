import type { Receipt } from '@larderbook/contracts';
import type { TemperatureUnit } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Keypad, type Entered } from '../../../ui/keypad';
import { numberOf } from '../../../ui/keypad-text';
import { Question } from '../../../ui/question';
import { VerdictWords } from '../../../ui/verdict-words';
import { useFigures, useSay } from '../../../ui/voice';
import type { Item } from '../known';
import { atTheDoor, verdictOf, type DeliveryDraft } from './delivery-draft';
import { doorThermometer, receivingRange } from './receiving-units';
import { useLimits, useTell } from '../../../ui/use-tell';

type TemperatureQuestionProps = {
  item: Item;
  before?: Receipt;
  temperature: DeliveryDraft['temperature'];
  onTemperature: (temperature: NonNullable<DeliveryDraft['temperature']>) => void;
};

/** The temperature is taken between two packages. */
export function TemperatureQuestion({ item, before, temperature, onTemperature }: TemperatureQuestionProps) {
  const say = useSay('receiving');
  const { tell } = useTell();
  const { sayLimit } = useLimits();
  const sayShared = useSay('shared');
  const { quantity } = useFigures();
  const { degrees } = useShop();
  const start =
    temperature && temperature !== 'none' ? { text: String(temperature.value), unit: temperature.unit } : { text: '', unit: degrees };
  const [entered, setEntered] = useState<Entered>(start);
  const value = numberOf(entered.text);
  const verdict = value === undefined ? undefined : verdictOf(item, { value, unit: unitOf(entered.unit), sure: false });
  const range = receivingRange(item);
  return (
    <Question title={say('temperature-question')} hint={say('temperature-hint')}>
      <Keypad
        label={item.name}
        units={doorThermometer(item, degrees)}
        entered={entered}
        onChange={setEntered}
        belowZero
        saveLabel={sayShared('next')}
        limit={range && sayLimit(range)}
        previous={before?.temperature && quantity(before.temperature)}
        preview={verdict && <VerdictWords verdict={atTheDoor(tell(verdict, range), say)} />}
        onSave={({ value: kept, unit, sure }) => onTemperature({ value: kept, unit: unitOf(unit), sure })}
      />
      <div>
        <Button onClick={() => onTemperature('none')}>{say(range ? 'refuse-unmeasured' : 'not-measured-button')}</Button>
      </div>
    </Question>
  );
}

const unitOf = (unit: string): TemperatureUnit => (unit === '°C' ? '°C' : '°F');
