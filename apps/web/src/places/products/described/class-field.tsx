import { productClasses, type ProductClass } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import { SelectField } from '../../../ui/select-field';
import { useSay } from '../../../ui/voice';

const notSaid = 'not said';

type ClassFieldProps = { value: ProductClass | undefined; error?: string; onChange: (value: ProductClass | undefined) => void };

export function ClassField({ value, error, onChange }: ClassFieldProps) {
  const say = useSay('products');
  const sayLimits = useSay('limits');
  return (
    <SelectField
      label={say('class')}
      optional
      choices={[
        { value: notSaid, name: say('not-said') },
        ...productClasses.map((each) => ({ value: each, name: sayLimits(codeOf('class', each)) })),
      ]}
      value={value ?? notSaid}
      hint={say('class-hint')}
      error={error}
      onChange={(chosen) => onChange(chosen === notSaid ? undefined : chosen)}
    />
  );
}
