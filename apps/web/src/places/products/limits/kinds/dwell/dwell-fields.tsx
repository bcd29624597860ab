import { Button } from '../../../../../ui/button';
import { Stack } from '../../../../../ui/stack';
import { useSay } from '../../../../../ui/voice';
import { DurationField } from '../../duration-field';
import { noDuration } from '../../duration-text';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import { NumberedRows } from '../../numbered-rows';
import { PrintedField } from '../../printed-field';
import { noPrinted } from '../../typed';
import type { DwellDraft } from './dwell-editor';

export function DwellFields({ draft, errors, onChange }: FieldsOf<DwellDraft>) {
  const say = useSay('limit-forms');
  const { rows } = draft;
  return (
    <Stack>
      <NumberedRows
        rows={rows}
        title={(number) => say('row', { number })}
        removeLabel={(number) => say('remove-row', { number })}
        onChange={(next) => onChange({ ...draft, rows: next })}
      >
        {(row, i, put) => (
          <>
            <PrintedField label={say('at-or-above')} value={row.at} error={errors[`rows.${i}.at`]} onChange={(at) => put({ ...row, at })} />
            <DurationField
              label={say('for')}
              value={row.time}
              error={errors[`rows.${i}.seconds`]}
              onChange={(time) => put({ ...row, time })}
            />
          </>
        )}
      </NumberedRows>
      <Button onClick={() => onChange({ ...draft, rows: [...rows, { at: noPrinted, time: noDuration }] })}>{say('add-row')}</Button>
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
