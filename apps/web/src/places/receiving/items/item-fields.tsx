import { itemKinds, species, substances } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Caution } from '../../../ui/caution';
import { ChoiceField } from '../../../ui/choice-field';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { AllergensField } from './allergens-field';
import { FractionField } from './fraction-field';
import { usualFraction, type ItemDraft } from './item-draft';
import { ReceivingField } from './receiving-field';
import { SaltAndWaterField } from './salt-and-water-field';

type ItemFieldsProps = { draft: ItemDraft; errors: FieldErrors; onChange: (draft: ItemDraft) => void };

const kindWords = {
  meat: { name: 'Meat', detail: 'raw material' },
  ingredient: { name: 'Ingredient', detail: 'spice, salt, cure, water' },
  packaging: { name: 'Packaging', detail: 'casings, bags, labels' },
};

/** Everything the book knows of an item; only what belongs to its kind is asked. */
export function ItemFields({ draft, errors, onChange }: ItemFieldsProps) {
  const { kind, substance } = draft;
  const setKind = (next: ItemDraft['kind']) => onChange({ ...draft, kind: next, receiving: next === 'meat' ? 'published' : 'none' });
  return (
    <Stack>
      <TextField
        label="Name"
        hint="As it is called in the shop."
        maxLength={120}
        autoComplete="off"
        value={draft.name}
        error={errors.name}
        onChange={(name) => onChange({ ...draft, name })}
      />
      <ChoiceField
        label="Kind"
        choices={itemKinds.map((value) => ({ value, ...kindWords[value] }))}
        value={kind}
        error={errors.kind}
        onChange={setKind}
      />
      {kind === 'meat' && (
        <SelectField
          label="Species"
          choices={species.map((value) => ({ value, name: value }))}
          value={draft.species}
          error={errors.species}
          onChange={(value) => onChange({ ...draft, species: value })}
        />
      )}
      {kind === 'ingredient' && (
        <SelectField
          label="Restricted substance in it"
          choices={[
            { value: 'none' as const, name: 'none' },
            ...substances.map((value) => ({ value, name: value === 'sodium nitrite' ? 'sodium nitrite (curing salt)' : value })),
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
          <Caution>
            Curing agents are toxic in excess. Keep them apart, labelled and weighed on a scale that shows tenths of a gram. Your plan, your
            inspector and local codes decide what is allowed.
          </Caution>
        </>
      )}
      {kind !== 'packaging' && <SaltAndWaterField draft={draft} errors={errors} onChange={onChange} />}
      {kind !== 'packaging' && <AllergensField chosen={draft.allergens} onChange={(chosen) => onChange({ ...draft, allergens: chosen })} />}
      {kind !== 'packaging' && <ReceivingField draft={draft} errors={errors} onChange={onChange} />}
    </Stack>
  );
}
