import type { FieldErrors } from '../../../api/check';
import { NumberField } from '../../../ui/number-field';
import { Row, Stack } from '../../../ui/stack';
import type { ItemDraft } from './item-draft';

type SaltAndWaterFieldProps = { draft: ItemDraft; errors: FieldErrors; onChange: (draft: ItemDraft) => void };

/** What it holds of salt and of water. Only a limit that asks for salt in the water phase needs it. */
export function SaltAndWaterField({ draft, errors, onChange }: SaltAndWaterFieldProps) {
  return (
    <Stack gap="near">
      <Row>
        <NumberField
          label="Salt in it"
          optional
          unit="%"
          decimals={4}
          value={draft.salt}
          error={errors.saltPercent}
          onChange={(salt) => onChange({ ...draft, salt })}
        />
        <NumberField
          label="Water in it"
          optional
          unit="%"
          decimals={4}
          value={draft.water}
          error={errors.waterPercent}
          onChange={(water) => onChange({ ...draft, water })}
          hint="From the label, an analysis or a table of foods. Needed where a limit asks for salt in the water phase."
        />
      </Row>
    </Stack>
  );
}
