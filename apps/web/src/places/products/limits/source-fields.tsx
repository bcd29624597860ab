import type { Source } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { CheckField } from '../../../ui/check-field';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';

type SourceFieldsProps = { source: Source; errors: FieldErrors; onChange: (source: Source) => void };

export function SourceFields({ source, errors, onChange }: SourceFieldsProps) {
  const say = useSay('limit-forms');
  return (
    <Stack>
      <TextArea
        label={say('source')}
        hint={say('source-hint')}
        rows={2}
        value={source.citation}
        error={errors['source.citation']}
        onChange={(citation) => onChange({ ...source, citation, url: undefined, support: undefined })}
      />
      <TextField
        label={say('edition')}
        optional
        hint={say('edition-hint')}
        autoComplete="off"
        value={source.edition}
        error={errors['source.edition']}
        onChange={(edition) => onChange({ ...source, edition })}
      />
      <CheckField
        label={say('was-read')}
        detail={say('was-read-detail')}
        checked={source.confirmed}
        onChange={(confirmed) => onChange({ ...source, confirmed })}
      />
    </Stack>
  );
}
