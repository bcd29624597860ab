import { processes, species } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { ClassField } from './class-field';
import type { ProductDraft } from './product-draft';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

type ProductFieldsProps = { draft: ProductDraft; errors: FieldErrors; onChange: (draft: ProductDraft) => void };

export function ProductFields({ draft, errors, onChange }: ProductFieldsProps) {
  const say = useSay('products');
  return (
    <Stack>
      <Columns>
        <TextField
          label={say('name')}
          hint={say('name-hint')}
          maxLength={120}
          autoComplete="off"
          value={draft.name}
          error={errors.name}
          onChange={(name) => onChange({ ...draft, name })}
        />
        <TextField
          label={say('code')}
          hint={say('code-hint')}
          maxLength={8}
          autoComplete="off"
          autoCapitalize="characters"
          value={draft.code}
          error={errors.code}
          onChange={(code) => onChange({ ...draft, code: code.toUpperCase() })}
        />
      </Columns>
      <ChoiceField
        label={say('how-made')}
        choices={processes.map((value) => ({ value, name: say(codeOf('process', value)) }))}
        value={draft.process || undefined}
        error={errors.process}
        onChange={(process) => onChange({ ...draft, process })}
      />
      <Columns>
        <SelectField
          label={say('of-species')}
          choices={species.map((value) => ({ value, name: say(codeOf('species', value)) }))}
          value={draft.species}
          error={errors.species}
          onChange={(chosen) => onChange({ ...draft, species: chosen })}
        />
        <NumberField
          label={say('use-by')}
          hint={say('use-by-hint')}
          unit={say('unit-days')}
          decimals={0}
          value={draft.useByDays}
          error={errors.useByDays}
          onChange={(useByDays) => onChange({ ...draft, useByDays })}
        />
      </Columns>
      <ClassField
        value={draft.productClass}
        error={errors.productClass}
        onChange={(productClass) => onChange({ ...draft, productClass })}
      />
      <TextField
        label={say('storage')}
        hint={say('storage-hint')}
        maxLength={200}
        autoComplete="off"
        value={draft.storage}
        error={errors.storage}
        onChange={(storage) => onChange({ ...draft, storage })}
      />
    </Stack>
  );
}
