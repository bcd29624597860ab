import { massUnits, type ControlPoint } from '@larderbook/contracts';
import { decimalText, scaled, unitsRead, type InstrumentErrors, type ScaleError } from '@larderbook/haccp';
import { useState } from 'react';
import { NumberField } from '../../../ui/number-field';
import { numberOf } from '../../../ui/keypad-text';
import { useShop } from '../../../api/use-shop';

type ErrorsFieldsProps = { point: ControlPoint; onChange: (errors: ControlPoint['errors']) => void };

/** What each instrument of a control point may be wrong by; the verdicts allow for it. */
export function ErrorsFields({ point, onChange }: ErrorsFieldsProps) {
  const { degrees, light, heavy } = useShop();
  const { errors = {} } = point;
  const asked = instrumentsOf(point);
  const change = (changed: InstrumentErrors) => {
    const stated = Object.entries({ ...errors, ...changed }).filter(([, error]) => error !== undefined);
    onChange(stated.length > 0 ? Object.fromEntries(stated) : undefined);
  };
  const unit = errors.temperature?.unit ?? degrees;
  const plain = (key: 'pH' | 'aw') => (thousandths: number | undefined) => change({ [key]: thousandths && { thousandths } });
  const meat = (of: ScaleError['unit']) => (thousandths: number | undefined) =>
    change({ meat: thousandths ? { thousandths, unit: of } : undefined });
  const [fine, coarse] = [errors.mass?.unit ?? light, errors.meat?.unit ?? heavy];
  return (
    <>
      {asked.temperature && (
        <ErrorField
          label="The thermometer may be wrong by"
          unit={unit}
          decimals={2}
          count={errors.temperature?.hundredths}
          hint="Allowed for in every verdict here: 165 °F and ± 1 °F ask for 166 °F. Take it from its card or its last check."
          onChange={(hundredths) => change({ temperature: hundredths ? { hundredths, unit } : undefined })}
        />
      )}
      {asked.mass && (
        <ErrorField
          label={asked.meat ? 'The scale for ingredients may be wrong by' : 'The scale may be wrong by'}
          unit={fine}
          decimals={3}
          count={errors.mass?.thousandths}
          hint="In each weighing: half of its step and what its last check showed."
          onChange={(thousandths) => change({ mass: thousandths ? { ...errors.mass, thousandths, unit: fine } : undefined })}
        />
      )}
      {asked.meat && errors.mass && (
        <ErrorField
          label="The scale for ingredients shows steps of"
          unit={fine}
          sign=""
          decimals={3}
          count={errors.mass.step}
          hint="Targets are rounded inward to it; a tenth of a gram where nothing is written."
          onChange={(step) => errors.mass && change({ mass: { ...errors.mass, step } })}
        />
      )}
      {asked.meat && (
        <ErrorField
          label="The scale for meat may be wrong by"
          unit={coarse}
          decimals={3}
          count={errors.meat?.thousandths}
          hint="Each time meat is put in."
          onChange={meat(coarse)}
        />
      )}
      {asked.pH && (
        <ErrorField
          label="The pH meter may be wrong by"
          decimals={3}
          count={errors.pH?.thousandths}
          hint="pH 5.3 and ± 0.05 ask for 5.25."
          onChange={plain('pH')}
        />
      )}
      {asked.aw && (
        <ErrorField
          label="The water activity meter may be wrong by"
          decimals={3}
          count={errors.aw?.thousandths}
          hint="0.85 and ± 0.003 ask for 0.847."
          onChange={plain('aw')}
        />
      )}
    </>
  );
}

/** Which instruments its limits are read with. */
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
