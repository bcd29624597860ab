import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { ChoiceField } from '../../../ui/choice-field';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { methodsFor, shouldRead, type CheckMethod, type Instrument } from './check-method';

/** `expected` is absent until it is known. */
export type Known = { method: CheckMethod; expected?: number };

export const knownBy = (method: CheckMethod, unit: string): Known => ({ method, expected: shouldRead(method, unit) });

type KnownValueProps = { instrument: Instrument; known: Known; onChange: (known: Known) => void };

export function KnownValue({ instrument, known: { method, expected }, onChange }: KnownValueProps) {
  const say = useSay('instruments');
  const methods = methodsFor(instrument);
  const expect = (value: number | undefined) => onChange({ method, expected: value });
  return (
    <Stack gap="near">
      {methods.length > 1 && (
        <ChoiceField
          label={say('against')}
          choices={methods.map((each) => ({ value: each, name: say(codeOf('method', each)) }))}
          value={method}
          onChange={(next) => onChange(knownBy(next, instrument.unit))}
        />
      )}
      {method === 'boiling point' && <Height unit={instrument.unit} expected={expected} onExpected={expect} />}
      {(method === 'reference instrument' || method === 'test weight') && (
        <Standard key={method} instrument={instrument} isWeight={method === 'test weight'} onExpected={expect} />
      )}
      {expected !== undefined && <p>{say(codeOf('how', method))}</p>}
    </Stack>
  );
}

function Standard({
  instrument,
  isWeight,
  onExpected,
}: {
  instrument: Instrument;
  isWeight: boolean;
  onExpected: (expected: number | undefined) => void;
}) {
  const say = useSay('instruments');
  const [text, setText] = useState('');
  return (
    <NumberField
      label={say(isWeight ? 'weight-says' : 'reference-says')}
      unit={instrument.unit}
      decimals={3}
      belowZero={!isWeight}
      value={text}
      onChange={(next) => {
        setText(next);
        onExpected(numberOf(next));
      }}
    />
  );
}

const metresPerFoot = 0.3048;

/**
 * Water boils lower the higher the shop stands (IAPWS-IF97 and the US Standard Atmosphere 1976); weather moves it by
 * about a degree.
 */
function Height({
  unit,
  expected,
  onExpected,
}: {
  unit: string;
  expected: number | undefined;
  onExpected: (expected: number | undefined) => void;
}) {
  const say = useSay('instruments');
  const { units } = useShop();
  const [text, setText] = useState('');
  const isFeet = units === 'US';
  return (
    <NumberField
      label={say('height')}
      unit={isFeet ? 'ft' : 'm'}
      decimals={0}
      belowZero
      value={text}
      hint={expected === undefined ? say('map-shows') : say('boils-at', { boils: `${expected} ${unit}` })}
      onChange={(next) => {
        setText(next);
        const height = numberOf(next);
        onExpected(height === undefined ? undefined : shouldRead('boiling point', unit, isFeet ? height * metresPerFoot : height));
      }}
    />
  );
}
