import type { AskedFor } from '@larderbook/haccp';
import { ChoiceField } from '../../../../../ui/choice-field';
import { Stack } from '../../../../../ui/stack';
import { TextArea } from '../../../../../ui/text-area';
import type { FieldsOf } from '../../fields-of';
import type { AttestationDraft } from './attestation-editor';

const askedWords: Record<'nothing' | AskedFor, { name: string; detail: string }> = {
  nothing: { name: 'Yes or no', detail: 'with what was seen' },
  moment: { name: 'The moment', detail: 'a clock of another control point starts there' },
  humidity: { name: 'Humidity while cooking', detail: 'its times and values, judged with the cook it was kept in' },
};

/** A statement, and what is recorded when it is answered. */
export function AttestationFields({ draft, errors, onChange }: FieldsOf<AttestationDraft>) {
  const choices = (Object.keys(askedWords) as (keyof typeof askedWords)[]).map((value) => ({ value, ...askedWords[value] }));
  return (
    <Stack>
      <TextArea
        label="Statement"
        hint="A sentence that is true or not: “The label is the one of this product.”"
        rows={3}
        value={draft.statement}
        error={errors.statement}
        onChange={(statement) => onChange({ ...draft, statement })}
      />
      <ChoiceField
        label="It asks for"
        choices={choices}
        value={draft.asks ?? 'nothing'}
        onChange={(asks) => onChange({ ...draft, asks: asks === 'nothing' ? undefined : asks })}
      />
    </Stack>
  );
}
