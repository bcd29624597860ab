import { humidityKept } from '@larderbook/contracts';
import type { HumidityKept } from '@larderbook/haccp';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { DateTimeField } from '../../../ui/date-time-field';
import { NumberField } from '../../../ui/number-field';
import { numberOf } from '../../../ui/keypad-text';
import { SelectField } from '../../../ui/select-field';

type How = HumidityKept['how'];
const ways: { value: How; name: string }[] = [
  { value: 'live steam', name: 'Live steam, half of the cooking time' },
  { value: 'sealed oven', name: 'Sealed oven, half of the cooking time' },
  { value: 'humid for a quarter', name: '90 % humidity, a quarter of the cooking time' },
  { value: 'humid throughout', name: '90 % humidity, all of the cooking time' },
  { value: 'moisture-proof bag', name: 'Sealed moisture-proof bag' },
  { value: 'large piece in a hot oven', name: 'A piece of 10 lb (4.5 kg) in an oven of 250 °F (121 °C)' },
];
type Draft = { how?: How; intoOven: string; from: string; minutes: string; percent: string; oven: string; piece: string };
const nothing: Draft = { intoOven: '', from: '', minutes: '', percent: '', oven: '', piece: '' };

/** How humidity was kept, with the values its option is judged by; nothing is handed on while one of them lacks. */
export function HumidityFields({ onChange }: { onChange: (kept: HumidityKept | undefined) => void }) {
  const { zone, units } = useShop();
  const [draft, setDraft] = useState(nothing);
  const [degrees, heavy] = units === 'US' ? (['°F', 'lb'] as const) : (['°C', 'kg'] as const);
  const change = (changed: Partial<Draft>) => {
    const next = { ...draft, ...changed };
    setDraft(next);
    const { how, intoOven, from } = next;
    const [minutes, percent, oven, piece] = [next.minutes, next.percent, next.oven, next.piece].map(numberOf);
    const typed = { how, intoOven, from, minutes, percent, oven: { value: oven, unit: degrees }, piece: { value: piece, unit: heavy } };
    onChange(humidityKept.safeParse(typed).data);
  };
  const { how } = draft;
  const isHumid = how === 'humid for a quarter' || how === 'humid throughout';
  const isTimed = isHumid || how === 'live steam' || how === 'sealed oven';
  return (
    <>
      <SelectField label="How was humidity kept?" choices={ways} value={how ?? ''} onChange={(value) => change({ how: value })} />
      {isTimed && (
        <>
          <DateTimeField label="Into the heated oven at" zone={zone} value={draft.intoOven} onChange={(intoOven) => change({ intoOven })} />
          <DateTimeField label="Humid from" zone={zone} value={draft.from} onChange={(from) => change({ from })} />
          <NumberField
            label="Humid in all"
            unit="min"
            decimals={0}
            hint="Bursts of steam add up."
            value={draft.minutes}
            onChange={(minutes) => change({ minutes })}
          />
        </>
      )}
      {isHumid && (
        <NumberField
          label="Lowest relative humidity"
          unit="%"
          decimals={1}
          value={draft.percent}
          onChange={(percent) => change({ percent })}
        />
      )}
      {how === 'large piece in a hot oven' && (
        <>
          <NumberField label="Lightest piece" unit={heavy} value={draft.piece} onChange={(piece) => change({ piece })} />
          <NumberField label="Oven, the coolest it was" unit={degrees} value={draft.oven} onChange={(oven) => change({ oven })} />
        </>
      )}
    </>
  );
}
