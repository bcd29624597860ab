import { receivedChilled } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { NumberField } from '../../../ui/number-field';
import { Columns, Stack } from '../../../ui/stack';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import type { ItemDraft } from './item-draft';

type ReceivingFieldProps = { draft: ItemDraft; errors: FieldErrors; onChange: (draft: ItemDraft) => void };

export function ReceivingField({ draft, errors, onChange }: ReceivingFieldProps) {
  const say = useSay('items');
  const { sayLimit } = useLimits();
  const { own } = draft;
  return (
    <Stack gap="near">
      <ChoiceField
        label={say('temperature-at-door')}
        value={draft.receiving}
        error={errors.receivingLimit}
        onChange={(receiving) => onChange({ ...draft, receiving })}
        choices={[
          { value: 'published', name: sayLimit(receivedChilled), detail: say('chilled-meat') },
          { value: 'own', name: say('own-range'), detail: say('own-range-for') },
          { value: 'none', name: say('not-judged') },
        ]}
      />
      {draft.receiving === 'own' && (
        <Columns least={14}>
          <NumberField
            label={say('no-warmer')}
            unit={own.unit}
            decimals={2}
            belowZero
            value={own.most}
            error={errors.most}
            onChange={(most) => onChange({ ...draft, own: { ...own, most } })}
          />
          <NumberField
            label={say('no-colder')}
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
