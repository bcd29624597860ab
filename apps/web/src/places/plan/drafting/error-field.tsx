import type { ControlPoint } from '@larderbook/contracts';
import { decimalText, scaled } from '@larderbook/haccp';
import { useState } from 'react';
import { NumberField } from '../../../ui/number-field';
import { numberOf } from '../../../ui/keypad-text';
import { useShop } from '../use-shop';

type ThermometerError = ControlPoint['thermometerError'];
type ErrorFieldProps = { value: ThermometerError; onChange: (value: ThermometerError) => void };

/** What the thermometer may be wrong by; the verdicts allow for it, so that 165 °F and ± 1 °F ask for 166 °F. */
export function ErrorField({ value, onChange }: ErrorFieldProps) {
  const shop = useShop();
  const unit = value?.unit ?? shop.degrees;
  const [text, setText] = useState(() => (value ? decimalText(value.hundredths, 2) : ''));
  const type = (next: string) => {
    setText(next);
    const hundredths = scaled(numberOf(next) ?? NaN, 2);
    onChange(hundredths ? { hundredths, unit } : undefined);
  };
  return (
    <NumberField
      label="The thermometer may be wrong by" optional unit={`± ${unit}`} value={text} onChange={type}
      hint="Allowed for in every verdict here: 165 °F and ± 1 °F ask for 166 °F. Take it from its card or its last check."
    />
  );
}
