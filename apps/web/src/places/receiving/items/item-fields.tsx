import { itemKinds, species, substances } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import type { FieldErrors } from '../../../api/check';
import { Caution } from '../../../ui/caution';
import { ChoiceField } from '../../../ui/choice-field';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { AllergensField } from './allergens-field';
import { FractionField } from './fraction-field';
import { usualFraction, type ItemDraft } from './item-draft';
import { ReceivingField } from './receiving-field';
import { SaltAndWaterField } from './salt-and-water-field';

type ItemFieldsProps = { draft: ItemDraft; errors: FieldErrors; onChange: (draft: ItemDraft) => void };

/** Asks only what belongs to the kind of item. */
export function ItemFields({ draft, errors, onChange }: ItemFieldsProps) {
  const say = useSay('items');
  const sayLimits = useSay('limits');
  const { kind, substance } = draft;
  const setKind = (next: ItemDraft['kind']) => onChange({ ...draft, kind: next, receiving: next === 'meat' ? 'published' : 'none' });
  return (
    <Stack>
      <TextField
        label={say('name')}
        hint={say('name-hint')}
        maxLength={120}
        autoComplete="off"
        value={draft.name}
        error={errors.name}
        onChange={(name) => onChange({ ...draft, name })}
      />
      <ChoiceField
        label={say('kind')}
        choices={itemKinds.map((value) => ({ value, name: say(codeOf('kind', value)), detail: say(codeOf('about', value)) }))}
        value={kind}
        error={errors.kind}
        onChange={setKind}
      />
      {kind === 'meat' && (
        <SelectField
          label={say('species')}
          choices={species.map((value) => ({ value, name: say(codeOf('species', value)) }))}
          value={draft.species}
          error={errors.species}
          onChange={(value) => onChange({ ...draft, species: value })}
        />
      )}
      {kind === 'ingredient' && (
        <SelectField
          label={say('restricted-in-it')}
          choices={[
            { value: 'none' as const, name: say('none') },
            ...substances.map((value) => ({
              value,
              name: value === 'sodium nitrite' ? say('nitrite-is-curing-salt') : sayLimits(codeOf('substance', value)),
            })),
          ]}
          value={substance}
          error={errors.substance}
          onChange={(value) => onChange({ ...draft, substance: value, fraction: value === 'none' ? '' : usualFraction[value] })}
        />
      )}
      {kind === 'ingredient' && substance !== 'none' && (
        <>
          <FractionField
            substance={substance}
            value={draft.fraction}
            error={errors.fractionPercent}
            onChange={(fraction) => onChange({ ...draft, fraction })}
          />
          <Caution>{say('cure-caution')}</Caution>
        </>
      )}
      {kind !== 'packaging' && <SaltAndWaterField draft={draft} errors={errors} onChange={onChange} />}
      {kind !== 'packaging' && <AllergensField chosen={draft.allergens} onChange={(chosen) => onChange({ ...draft, allergens: chosen })} />}
      {kind !== 'packaging' && <ReceivingField draft={draft} errors={errors} onChange={onChange} />}
    </Stack>
  );
}
