import { ChoiceField } from '../../../../../ui/choice-field';
import { Stack } from '../../../../../ui/stack';
import { TextArea } from '../../../../../ui/text-area';
import type { FieldsOf } from '../../fields-of';
import type { AttestationDraft } from './attestation-editor';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../../../ui/voice';

const asked = ['nothing', 'moment', 'humidity'] as const;

export function AttestationFields({ draft, errors, onChange }: FieldsOf<AttestationDraft>) {
  const say = useSay('limit-forms');
  const choices = asked.map((value) => ({ value, name: say(codeOf('asks', value)), detail: say(`asks-${value}-detail`) }));
  return (
    <Stack>
      <TextArea
        label={say('statement')}
        hint={say('statement-hint')}
        rows={3}
        value={draft.statement}
        error={errors.statement}
        onChange={(statement) => onChange({ ...draft, statement })}
      />
      <ChoiceField
        label={say('asks-for')}
        choices={choices}
        value={draft.asks ?? 'nothing'}
        onChange={(asks) => onChange({ ...draft, asks: asks === 'nothing' ? undefined : asks })}
      />
    </Stack>
  );
}
