import { processes, species } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { SelectField } from '../../../ui/select-field';
import { Columns, Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { classChoices } from './class-words';
import type { ProductDraft } from './product-draft';
import { processWords, speciesWords } from './product-words';

type ProductFieldsProps = { draft: ProductDraft; errors: FieldErrors; onChange: (draft: ProductDraft) => void };

const notSaid = { value: 'not said', name: 'Not said' } as const;

/** What a product is called, how it is made, and how long it keeps. */
export function ProductFields({ draft, errors, onChange }: ProductFieldsProps) {
  return (
    <Stack>
      <Columns>
        <TextField
          label="Name"
          hint="As it stands on the label."
          maxLength={120}
          autoComplete="off"
          value={draft.name}
          error={errors.name}
          onChange={(name) => onChange({ ...draft, name })}
        />
        <TextField
          label="Code"
          hint="One to eight letters or digits; lot codes begin with it."
          maxLength={8}
          autoComplete="off"
          autoCapitalize="characters"
          value={draft.code}
          error={errors.code}
          onChange={(code) => onChange({ ...draft, code: code.toUpperCase() })}
        />
      </Columns>
      <ChoiceField
        label="How it is made"
        choices={processes.map((value) => ({ value, name: processWords[value] }))}
        value={draft.process || undefined}
        error={errors.process}
        onChange={(process) => onChange({ ...draft, process })}
      />
      <Columns>
        <SelectField
          label="Species"
          choices={species.map((value) => ({ value, name: speciesWords[value] }))}
          value={draft.species}
          error={errors.species}
          onChange={(chosen) => onChange({ ...draft, species: chosen })}
        />
        <NumberField
          label="Use by"
          hint="Days from packing. Your own shelf-life support decides."
          unit="days"
          decimals={0}
          value={draft.useByDays}
          error={errors.useByDays}
          onChange={(useByDays) => onChange({ ...draft, useByDays })}
        />
      </Columns>
      <SelectField
        label="Class"
        optional
        choices={[notSaid, ...classChoices]}
        value={draft.productClass ?? notSaid.value}
        hint="What it is, as far as published limits tell products apart. It decides which of them are shown."
        error={errors.productClass}
        onChange={(chosen) => onChange({ ...draft, productClass: chosen === notSaid.value ? undefined : chosen })}
      />
      <TextField
        label="Storage"
        hint="As it stands on the label: “Keep refrigerated at or below 40 °F”."
        maxLength={200}
        autoComplete="off"
        value={draft.storage}
        error={errors.storage}
        onChange={(storage) => onChange({ ...draft, storage })}
      />
    </Stack>
  );
}
