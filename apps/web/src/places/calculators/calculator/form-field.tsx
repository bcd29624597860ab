import { massUnits, temperatureUnits } from '@larderbook/contracts';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { unitKey, type Typed } from '../forms/body-of';
import type { FormField as Asked } from '../forms/form';
import { LimitField } from './limit-field';
import { useSay } from '../../../ui/voice';

type FormFieldProps = { field: Asked; typed: Typed; errors: Record<string, string>; onType: (key: string, text: string) => void };

export function FormField({ field, typed, errors, onType }: FormFieldProps) {
  const say = useSay('calculations');
  const { key, optional } = field;
  const value = typed[key] ?? '';
  const frame = { label: say(field.label), hint: field.hint && say(field.hint), optional, error: errors[key] };
  const type = (text: string) => onType(key, text);
  switch (field.kind) {
    case 'number':
      return (
        <NumberField
          {...frame}
          value={value}
          onChange={type}
          unit={field.unitSaid ? say(field.unitSaid) : field.unit}
          decimals={field.decimals}
          belowZero={field.belowZero}
        />
      );
    case 'mass':
      return (
        <Columns least={12}>
          <NumberField {...frame} error={errors[`${key}.value`]} decimals={3} value={value} onChange={type} />
          <SelectField
            label={say('unit')}
            choices={massUnits.map((unit) => ({ value: unit, name: unit }))}
            value={typed[unitKey(key)] ?? ''}
            onChange={(unit) => onType(unitKey(key), unit)}
          />
        </Columns>
      );
    case 'unit':
      return (
        <ChoiceField {...frame} choices={temperatureUnits.map((unit) => ({ value: unit, name: unit }))} value={value} onChange={type} />
      );
    case 'choice':
      return (
        <ChoiceField
          {...frame}
          choices={field.choices.map(({ value: choice, name }) => ({ value: choice, name: name ? say(name) : choice }))}
          value={value}
          onChange={type}
        />
      );
    case 'limit':
      return <LimitField {...frame} kinds={field.kinds} value={value} onChange={type} />;
    case 'text':
      return <TextField {...frame} value={value} onChange={type} />;
    case 'lines':
    case 'series':
      return <TextArea {...frame} rows={8} spellCheck={false} inputMode="text" value={value} onChange={type} />;
  }
}
