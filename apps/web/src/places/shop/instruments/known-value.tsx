import { useState } from 'react';
import { useShop } from '../../../api/use-shop';
import { ChoiceField } from '../../../ui/choice-field';
import { numberOf } from '../../../ui/keypad-text';
import { NumberField } from '../../../ui/number-field';
import { Stack } from '../../../ui/stack';
import { methodsFor, methodWords, shouldRead, type CheckMethod, type Instrument } from './check-method';

type KnownValueProps = {
  instrument: Instrument;
  method: CheckMethod;
  expected: number | undefined;
  onMethod: (method: CheckMethod) => void;
  onExpected: (expected: number | undefined) => void;
};

/** Against what an instrument is checked, and what it should therefore read. */
export function KnownValue({ instrument, method, expected, onMethod, onExpected }: KnownValueProps) {
  const methods = methodsFor(instrument);
  return (
    <Stack gap="near">
      {methods.length > 1 && (
        <ChoiceField
          label="Against"
          choices={methods.map((each) => ({ value: each, name: methodWords[each].name }))}
          value={method}
          onChange={onMethod}
        />
      )}
      {method === 'boiling point' && <Height unit={instrument.unit} expected={expected} onExpected={onExpected} />}
      {(method === 'reference instrument' || method === 'test weight') && (
        <Standard key={method} instrument={instrument} isWeight={method === 'test weight'} onExpected={onExpected} />
      )}
      {expected !== undefined && <p>{methodWords[method].how}</p>}
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
  const [text, setText] = useState('');
  return (
    <NumberField
      label={isWeight ? 'The weight says' : 'The reference says'}
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

/** Water boils lower the higher the shop stands (IAPWS-IF97 and the US Standard Atmosphere 1976); weather moves it by about a degree. */
function Height({
  unit,
  expected,
  onExpected,
}: {
  unit: string;
  expected: number | undefined;
  onExpected: (expected: number | undefined) => void;
}) {
  const { units } = useShop();
  const [text, setText] = useState('');
  const isFeet = units === 'US';
  return (
    <NumberField
      label="Height of the shop above the sea"
      unit={isFeet ? 'ft' : 'm'}
      decimals={0}
      belowZero
      value={text}
      hint={
        expected === undefined
          ? 'A map shows it.'
          : `There water boils at about ${expected} ${unit}; weather moves it by up to 1 °F (0.6 °C).`
      }
      onChange={(next) => {
        setText(next);
        const height = numberOf(next);
        onExpected(height === undefined ? undefined : shouldRead('boiling point', unit, isFeet ? height * metresPerFoot : height));
      }}
    />
  );
}
