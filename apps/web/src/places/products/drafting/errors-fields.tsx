import { massUnits, type ControlPoint } from '@larderbook/contracts';
import { decimalText, scaled, unitsRead, type InstrumentErrors } from '@larderbook/haccp';
import { useState } from 'react';
import { NumberField } from '../../../ui/number-field';
import { numberOf } from '../../../ui/keypad-text';
import { useShop } from '../../../api/use-shop';
import { useSay } from '../../../ui/voice';

type ErrorsFieldsProps = { point: ControlPoint; onChange: (errors: ControlPoint['errors']) => void };

/** The verdicts allow for these errors. */
export function ErrorsFields({ point, onChange }: ErrorsFieldsProps) {
  const say = useSay('plan-points');
  const { degrees } = useShop();
  const { errors = {} } = point;
  const asked = instrumentsOf(point);
  const change = (changed: InstrumentErrors) => {
    const stated = Object.entries({ ...errors, ...changed }).filter(([, error]) => error !== undefined);
    onChange(stated.length > 0 ? Object.fromEntries(stated) : undefined);
  };
  const unit = errors.temperature?.unit ?? degrees;
  const plain = (key: 'pH' | 'aw') => (thousandths: number | undefined) => change({ [key]: thousandths && { thousandths } });
  return (
    <>
      {asked.temperature && (
        <ErrorField
          label={say('thermometer-error')}
          unit={unit}
          decimals={2}
          count={errors.temperature?.hundredths}
          hint={say('thermometer-error-hint')}
          onChange={(hundredths) => change({ temperature: hundredths ? { hundredths, unit } : undefined })}
        />
      )}
      {asked.mass && <ScaleErrors errors={errors} isMeat={asked.meat} onChange={change} />}
      {asked.pH && (
        <ErrorField
          label={say('ph-error')}
          decimals={3}
          count={errors.pH?.thousandths}
          hint={say('ph-error-hint')}
          onChange={plain('pH')}
        />
      )}
      {asked.aw && (
        <ErrorField
          label={say('aw-error')}
          decimals={3}
          count={errors.aw?.thousandths}
          hint={say('aw-error-hint')}
          onChange={plain('aw')}
        />
      )}
    </>
  );
}

type ScaleErrorsProps = { errors: InstrumentErrors; isMeat: boolean; onChange: (changed: InstrumentErrors) => void };

function ScaleErrors({ errors: { mass, meat }, isMeat, onChange }: ScaleErrorsProps) {
  const say = useSay('plan-points');
  const { light, heavy } = useShop();
  const [fine, coarse] = [mass?.unit ?? light, meat?.unit ?? heavy];
  return (
    <>
      <ErrorField
        label={say(isMeat ? 'fine-scale-error' : 'scale-error')}
        unit={fine}
        decimals={3}
        count={mass?.thousandths}
        hint={say('scale-error-hint')}
        onChange={(thousandths) => onChange({ mass: thousandths ? { ...mass, thousandths, unit: fine } : undefined })}
      />
      {isMeat && mass && (
        <ErrorField
          label={say('scale-step')}
          unit={fine}
          sign=""
          decimals={3}
          count={mass.step}
          hint={say('scale-step-hint')}
          onChange={(step) => onChange({ mass: { ...mass, step } })}
        />
      )}
      {isMeat && (
        <ErrorField
          label={say('meat-scale-error')}
          unit={coarse}
          decimals={3}
          count={meat?.thousandths}
          hint={say('meat-scale-error-hint')}
          onChange={(thousandths) => onChange({ meat: thousandths ? { thousandths, unit: coarse } : undefined })}
        />
      )}
    </>
  );
}

function instrumentsOf({ takenAs, limits }: ControlPoint) {
  const units = unitsRead(limits.map(({ limit }) => limit));
  const isWeighed = takenAs === 'weighings';
  return {
    temperature: units.includes('°F'),
    mass: isWeighed || massUnits.some((unit) => units.includes(unit)),
    meat: isWeighed,
    pH: units.includes('pH'),
    aw: units.includes('aw'),
  };
}

type ErrorFieldProps = {
  label: string;
  hint: string;
  unit?: string;
  sign?: string;
  decimals: number;
  /** In whole last decimals. */
  count: number | undefined;
  onChange: (count: number | undefined) => void;
};

function ErrorField({ label, hint, unit = '', sign = '± ', decimals, count, onChange }: ErrorFieldProps) {
  const [text, setText] = useState(() => (count === undefined ? '' : decimalText(count, decimals)));
  const type = (next: string) => {
    setText(next);
    onChange(scaled(numberOf(next) ?? NaN, decimals) || undefined);
  };
  return <NumberField label={label} hint={hint} optional decimals={decimals} unit={`${sign}${unit}`} value={text} onChange={type} />;
}
