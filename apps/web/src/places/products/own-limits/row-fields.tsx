import { TextArea } from '../../../ui/text-area';
import { Columns, Stack } from '../../../ui/stack';
import { SelectField } from '../../../ui/select-field';
import { TextField } from '../../../ui/text-field';
import type { FieldErrors } from '../../../api/check';
import { ConditionsField } from './conditions-field';
import { FigureField } from './figure-field';
import type { RowDraft } from './own-draft';

import { useSay } from '../../../ui/voice';
import { codeOf } from '@larderbook/messages';
import { forces, purposes, waysKnown } from '@larderbook/haccp';

/** A figure that was read in its source says so with the figure. */
const unconfirmed = waysKnown.filter((known) => known !== 'read in the source');

type RowFieldsProps = { row: RowDraft; errors: FieldErrors; onChange: (row: RowDraft) => void };

/** Everything written about one figure: what it is for, its limit, where the support is filed, when it holds. */
export function RowFields({ row, errors, onChange }: RowFieldsProps) {
  const say = useSay('own-limits');
  const sayPurpose = useSay('limit-purposes');
  const isUnconfirmed = row.limit !== undefined && !row.limit.source.confirmed;
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
