import { humidityKept } from '@larderbook/contracts';
import type { HumidityKept } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { DateTimeField } from '../../../ui/date-time-field';
import { NumberField } from '../../../ui/number-field';
import { numberOf } from '../../../ui/keypad-text';
import { SelectField } from '../../../ui/select-field';
import { useSay } from '../../../ui/voice';

type How = HumidityKept['how'];
const ways = [
  'live steam',
  'sealed oven',
  'humid for a quarter',
  'humid throughout',
  'moisture-proof bag',
  'large piece in a hot oven',
] as const satisfies readonly How[];
type Draft = { how?: How; intoOven: string; from: string; minutes: string; percent: string; oven: string; piece: string };
const nothing: Draft = { intoOven: '', from: '', minutes: '', percent: '', oven: '', piece: '' };

/** `kept` is undefined while a value that its option is judged by is missing. */
export function HumidityFields({ onChange }: { onChange: (kept: HumidityKept | undefined) => void }) {
  const say = useSay('lot-forms');
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
      <SelectField
        label={say('how-humid')}
        choices={ways.map((value) => ({ value, name: say(codeOf('humid', value)) }))}
        value={how ?? ''}
        onChange={(value) => change({ how: value })}
      />
      {isTimed && (
        <>
          <DateTimeField label={say('into-oven')} zone={zone} value={draft.intoOven} onChange={(intoOven) => change({ intoOven })} />
          <DateTimeField label={say('humid-from')} zone={zone} value={draft.from} onChange={(from) => change({ from })} />
          <NumberField
            label={say('humid-in-all')}
            unit="min"
            decimals={0}
            hint={say('bursts-add-up')}
            value={draft.minutes}
            onChange={(minutes) => change({ minutes })}
          />
        </>
      )}
      {isHumid && (
        <NumberField
          label={say('lowest-humidity')}
          unit="%"
          decimals={1}
          value={draft.percent}
          onChange={(percent) => change({ percent })}
        />
      )}
      {how === 'large piece in a hot oven' && (
        <>
          <NumberField label={say('lightest-piece')} unit={heavy} value={draft.piece} onChange={(piece) => change({ piece })} />
          <NumberField label={say('coolest-oven')} unit={degrees} value={draft.oven} onChange={(oven) => change({ oven })} />
        </>
      )}
    </>
  );
}
