import type { FieldErrors } from '../../../api/check';
import { NumberField } from '../../../ui/number-field';
import { Row, Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import type { ItemDraft } from './item-draft';

type SaltAndWaterFieldProps = { draft: ItemDraft; errors: FieldErrors; onChange: (draft: ItemDraft) => void };

/** Only a limit on salt in the water phase needs it. */
export function SaltAndWaterField({ draft, errors, onChange }: SaltAndWaterFieldProps) {
  const say = useSay('items');
  return (
    <Stack gap="near">
      <Row>
        <NumberField
          label={say('salt-in-it')}
          optional
          unit="%"
          decimals={4}
          value={draft.salt}
          error={errors.saltPercent}
          onChange={(salt) => onChange({ ...draft, salt })}
        />
        <NumberField
          label={say('water-in-it')}
          optional
          unit="%"
          decimals={4}
          value={draft.water}
          error={errors.waterPercent}
          onChange={(water) => onChange({ ...draft, water })}
          hint={say('water-hint')}
        />
      </Row>
    </Stack>
  );
}
