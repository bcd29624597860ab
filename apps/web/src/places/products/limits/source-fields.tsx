import type { Source } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { CheckField } from '../../../ui/check-field';
import { Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';

type SourceFieldsProps = { source: Source; errors: FieldErrors; onChange: (source: Source) => void };

/** Where a figure comes from, and whether somebody has read it there. */
export function SourceFields({ source, errors, onChange }: SourceFieldsProps) {
  return (
    <Stack>
      <TextArea
        label="Source"
        hint="The rule, guideline or study, with its page or section; or your own validation and where it is filed."
        rows={2}
        value={source.citation}
        error={errors['source.citation']}
        onChange={(citation) => onChange({ ...source, citation, url: undefined, support: undefined })}
      />
      <TextField
        label="Edition or date"
        optional
        hint="A figure in a set of your own needs it."
        autoComplete="off"
        value={source.edition}
        error={errors['source.edition']}
        onChange={(edition) => onChange({ ...source, edition })}
      />
      <CheckField
        label="The figure was read in the source itself"
        detail="Otherwise it stands as not confirmed, on screen and on paper."
        checked={source.confirmed}
        onChange={(confirmed) => onChange({ ...source, confirmed })}
      />
    </Stack>
  );
}
