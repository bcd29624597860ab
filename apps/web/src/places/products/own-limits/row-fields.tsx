import { TextArea } from '../../../ui/text-area';
import { Columns, Stack } from '../../../ui/stack';
import { SelectField } from '../../../ui/select-field';
import { TextField } from '../../../ui/text-field';
import type { FieldErrors } from '../../../api/check';
import { ConditionsField } from './conditions-field';
import { FigureField } from './figure-field';
import type { RowDraft } from './own-draft';
import { SupportFields } from './support-fields';

import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';
import { purposes } from '@larderbook/haccp';

type RowFieldsProps = { row: RowDraft; errors: FieldErrors; onChange: (row: RowDraft) => void };

export function RowFields({ row, errors, onChange }: RowFieldsProps) {
  const say = useSay('own-limits');
  const sayPurpose = useSay('limit-purposes');
  return (
    <Stack>
      <Columns least={15}>
        <TextField
          label={say('what-it-is')}
          hint={say('what-it-is-hint')}
          value={row.title}
          error={errors.title}
          maxLength={120}
          autoComplete="off"
          onChange={(title) => onChange({ ...row, title })}
        />
        <SelectField
          label={say('what-about')}
          choices={purposes.map((value) => ({ value, name: sayPurpose(codeOf('purpose', value)) }))}
          value={row.purpose}
          error={errors.purpose}
          onChange={(purpose) => onChange({ ...row, purpose })}
        />
      </Columns>
      <FigureField row={row} error={errors.limit} onChange={onChange} />
      <SupportFields row={row} errors={errors} onChange={onChange} />
      <ConditionsField conditions={row.conditions} onChange={(conditions) => onChange({ ...row, conditions })} />
      <TextArea
        label={say('note')}
        optional
        rows={2}
        value={row.note}
        error={errors.note}
        onChange={(note) => onChange({ ...row, note })}
      />
    </Stack>
  );
}
