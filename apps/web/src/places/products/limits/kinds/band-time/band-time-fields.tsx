import { Stack } from '../../../../../ui/stack';
import { DurationField } from '../../duration-field';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import type { BandTimeDraft } from './band-time-editor';
import { PrintedField } from '../../printed-field';
import { useSay } from '../../../../../ui/voice';

export function BandTimeFields({ draft, errors, onChange }: FieldsOf<BandTimeDraft>) {
  const say = useSay('limit-forms');
  return (
    <Stack>
      <PrintedField
        label={say('from')}
        hint={say('colder-end')}
        value={draft.from}
        error={errors.from}
        onChange={(from) => onChange({ ...draft, from })}
      />
      <PrintedField
        label={say('to')}
        hint={say('warmer-end')}
        value={draft.to}
        error={errors.to}
        onChange={(to) => onChange({ ...draft, to })}
      />
      <DurationField
        label={say('most-in-all')}
        value={draft.most}
        error={errors.maxSeconds}
        onChange={(most) => onChange({ ...draft, most })}
      />
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
