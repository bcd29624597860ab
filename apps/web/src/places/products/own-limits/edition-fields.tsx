import type { FieldErrors } from '../../../api/check';
import { DateField } from '../../../ui/date-field';
import { Columns } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import type { OwnDraft } from './own-draft';

type Edition = Pick<OwnDraft, 'title' | 'edition' | 'validFrom'>;
type EditionFieldsProps = { draft: Edition; errors: FieldErrors; onChange: (changed: Partial<Edition>) => void };

export function EditionFields({ draft, errors, onChange }: EditionFieldsProps) {
  const say = useSay('own-limits');
  return (
    <Columns>
      <TextField
        label={say('set-title')}
        hint={say('set-title-hint')}
        value={draft.title}
        error={errors.title}
        maxLength={120}
        autoComplete="off"
        onChange={(title) => onChange({ title })}
      />
      <TextField
        label={say('edition')}
        hint={say('edition-hint')}
        value={draft.edition}
        error={errors.edition}
        maxLength={40}
        autoComplete="off"
        onChange={(edition) => onChange({ edition })}
      />
      <DateField
        label={say('counts-from')}
        hint={say('counts-from-hint')}
        value={draft.validFrom}
        error={errors.validFrom}
        onChange={(validFrom) => onChange({ validFrom })}
      />
    </Columns>
  );
}
