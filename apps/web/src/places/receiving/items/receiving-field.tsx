import { receivedChilled, sayLimit } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { Columns, Stack } from '../../../ui/stack';
import type { ItemDraft } from './item-draft';

type ReceivingFieldProps = { draft: ItemDraft; errors: FieldErrors; onChange: (draft: ItemDraft) => void };

/** The temperature range in which it may come in: the usual figure, one of the shop's own, or none. */
export function ReceivingField({ draft, errors, onChange }: ReceivingFieldProps) {
  const { own } = draft;
  return (
    <Stack gap="near">
      <ChoiceField
        label="Temperature at the door"
        value={draft.receiving}
        error={errors.receivingLimit}
        onChange={(receiving) => onChange({ ...draft, receiving })}
        choices={[
          { value: 'published', name: sayLimit(receivedChilled), detail: 'chilled meat; common practice, no published source' },
          { value: 'own', name: 'Our own range', detail: 'frozen goods, or what your plan says' },
          { value: 'none', name: 'Not judged' },
        ]}
      />
      {draft.receiving === 'own' && (
        <Columns least={14}>
          <NumberField
            label="No warmer than"
            unit={own.unit}
            decimals={2}
            belowZero
            value={own.most}
            error={errors.most}
            onChange={(most) => onChange({ ...draft, own: { ...own, most } })}
          />
          <NumberField
            label="No colder than"
            optional
            unit={own.unit}
            decimals={2}
            belowZero
            value={own.least}
            error={errors.least}
            onChange={(least) => onChange({ ...draft, own: { ...own, least } })}
          />
        </Columns>
      )}
    </Stack>
  );
}
