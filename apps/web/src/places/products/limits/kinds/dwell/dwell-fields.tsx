import { Button } from '../../../../../ui/button';
import { Stack } from '../../../../../ui/stack';
import { DurationField } from '../../duration-field';
import { noDuration } from '../../duration-text';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import type { DwellDraft } from './dwell-editor';
import { noPrinted } from '../../typed';
import css from '../../limits.module.css';
import { PrintedField } from '../../printed-field';
import { useSay } from '../../../../../ui/voice';

/** A table of temperatures and the time each is held; one row is enough. */
export function DwellFields({ draft, errors, onChange }: FieldsOf<DwellDraft>) {
  const say = useSay('limit-forms');
  const sayShared = useSay('shared');
  const { rows } = draft;
  return (
    <Stack>
      <ol className={css.rows}>
        {rows.map((row, i) => (
          <li key={i} className={css.row}>
            <div className={css.rowHead}>
              <h3>{say('row', { number: i + 1 })}</h3>
              {rows.length > 1 && (
                <Button
                  look="quiet"
                  aria-label={say('remove-row', { number: i + 1 })}
                  onClick={() => onChange({ ...draft, rows: rows.toSpliced(i, 1) })}
                >
                  {sayShared('remove')}
                </Button>
              )}
            </div>
            <PrintedField
              label={say('at-or-above')}
              value={row.at}
              error={errors[`rows.${i}.at`]}
              onChange={(at) => onChange({ ...draft, rows: rows.with(i, { ...row, at }) })}
            />
            <DurationField
              label={say('for')}
              value={row.time}
              error={errors[`rows.${i}.seconds`]}
              onChange={(time) => onChange({ ...draft, rows: rows.with(i, { ...row, time }) })}
            />
          </li>
        ))}
      </ol>
      <Button onClick={() => onChange({ ...draft, rows: [...rows, { at: noPrinted, time: noDuration }] })}>{say('add-row')}</Button>
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
