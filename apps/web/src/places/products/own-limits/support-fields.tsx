import { forces, waysKnown } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import type { FieldErrors } from '../../../api/check';
import { SelectField } from '../../../ui/select-field';
import { Columns } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import type { RowDraft } from './own-draft';

/** Whether a figure was read in its source is said with the figure. */
const unconfirmed = waysKnown.filter((known) => known !== 'read in the source');

type SupportFieldsProps = { row: RowDraft; errors: FieldErrors; onChange: (row: RowDraft) => void };

export function SupportFields({ row, errors, onChange }: SupportFieldsProps) {
  const say = useSay('own-limits');
  const isUnconfirmed = row.limit !== undefined && !row.limit.source.confirmed;
  return (
    <Columns least={15}>
      <TextField
        label={say('support-filed')}
        hint={say('support-filed-hint')}
        value={row.paragraph}
        error={errors.paragraph}
        maxLength={300}
        autoComplete="off"
        onChange={(paragraph) => onChange({ ...row, paragraph })}
      />
      <SelectField
        label={say('weighs')}
        choices={forces.map((value) => ({ value, name: say(codeOf('weighs', value)) }))}
        value={row.force}
        error={errors.force}
        onChange={(force) => onChange({ ...row, force })}
      />
      {isUnconfirmed && (
        <SelectField
          label={say('how-known')}
          choices={unconfirmed.map((value) => ({ value, name: say(codeOf('known', value)) }))}
          value={row.known}
          error={errors.known}
          onChange={(known) => onChange({ ...row, known })}
        />
      )}
      <TextField
        label={say('counts-from')}
        hint={say('row-from-hint')}
        value={row.validFrom}
        error={errors.validFrom}
        autoComplete="off"
        onChange={(validFrom) => onChange({ ...row, validFrom })}
      />
      <TextField
        label={say('counts-until')}
        optional
        hint={say('counts-until-hint')}
        value={row.validUntil}
        error={errors.validUntil}
        autoComplete="off"
        onChange={(validUntil) => onChange({ ...row, validUntil })}
      />
    </Columns>
  );
}
