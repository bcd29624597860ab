import { TextArea } from '../../../ui/text-area';
import { Columns, Stack } from '../../../ui/stack';
import { SelectField } from '../../../ui/select-field';
import { TextField } from '../../../ui/text-field';
import type { FieldErrors } from '../../../api/check';
import { ConditionsField } from './conditions-field';
import { FigureField } from './figure-field';
import type { RowDraft } from './own-draft';
import { forceChoices, purposeChoices, unconfirmedChoices } from './own-words';

type RowFieldsProps = { row: RowDraft; errors: FieldErrors; onChange: (row: RowDraft) => void };

/** Everything written about one figure: what it is for, its limit, where the support is filed, when it holds. */
export function RowFields({ row, errors, onChange }: RowFieldsProps) {
  const isUnconfirmed = row.limit !== undefined && !row.limit.source.confirmed;
  return (
    <Stack>
      <Columns least={15}>
        <TextField
          label="What it is"
          hint="Such as “Core of smoked sausage”."
          value={row.title}
          error={errors.title}
          maxLength={120}
          autoComplete="off"
          onChange={(title) => onChange({ ...row, title })}
        />
        <SelectField
          label="What it is about"
          choices={purposeChoices}
          value={row.purpose}
          error={errors.purpose}
          onChange={(purpose) => onChange({ ...row, purpose })}
        />
      </Columns>
      <FigureField row={row} error={errors.limit} onChange={onChange} />
      <Columns least={15}>
        <TextField
          label="Where its support is filed"
          hint="The binder and tab, or the section of the source."
          value={row.paragraph}
          error={errors.paragraph}
          maxLength={300}
          autoComplete="off"
          onChange={(paragraph) => onChange({ ...row, paragraph })}
        />
        <SelectField
          label="What it weighs"
          choices={forceChoices}
          value={row.force}
          error={errors.force}
          onChange={(force) => onChange({ ...row, force })}
        />
        {isUnconfirmed && (
          <SelectField
            label="How the figure is known"
            choices={unconfirmedChoices}
            value={row.known}
            error={errors.known}
            onChange={(known) => onChange({ ...row, known })}
          />
        )}
        <TextField
          label="Counts from"
          hint="A year, a month or a day: 2026 or 2026-03-02."
          value={row.validFrom}
          error={errors.validFrom}
          autoComplete="off"
          onChange={(validFrom) => onChange({ ...row, validFrom })}
        />
        <TextField
          label="Counts until"
          optional
          hint="The last day, month or year."
          value={row.validUntil}
          error={errors.validUntil}
          autoComplete="off"
          onChange={(validUntil) => onChange({ ...row, validUntil })}
        />
      </Columns>
      <ConditionsField conditions={row.conditions} onChange={(conditions) => onChange({ ...row, conditions })} />
      <TextArea label="Note" optional rows={2} value={row.note} error={errors.note} onChange={(note) => onChange({ ...row, note })} />
    </Stack>
  );
}
