import type { EstablishmentFields } from '@larderbook/contracts';
import { placesIn, publishedJurisdictions } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';

export type Where = Pick<EstablishmentFields, 'jurisdiction' | 'place' | 'limitSet'>;
type WhereFieldsProps<T extends Where> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

const notSaid = 'not said';

export function WhereFields<T extends Where>({ value, errors, onChange }: WhereFieldsProps<T>) {
  const say = useSay('shop');
  const { sayName } = useLimits();
  const none = { value: notSaid, name: say('not-said') } as const;
  const places = value.jurisdiction ? placesIn[value.jurisdiction] : [];
  return (
    <Stack>
      <SelectField
        label={say('whose-limits')}
        choices={[none, ...publishedJurisdictions.map((each) => ({ value: each, name: sayName(each) }))]}
        value={value.jurisdiction ?? notSaid}
        hint={say('whose-limits-hint')}
        error={errors.jurisdiction}
        onChange={(chosen) => {
          const jurisdiction = chosen === notSaid ? undefined : chosen;
          onChange({ ...value, jurisdiction, place: undefined, limitSet: undefined });
        }}
      />
      {places.length > 0 && (
        <SelectField
          label={say('where-within')}
          hint={say('where-within-hint')}
          choices={[none, ...places.map((place) => ({ value: place, name: sayName(place) }))]}
          value={value.place ?? notSaid}
          error={errors.place}
          onChange={(place) => onChange({ ...value, place: place === notSaid ? undefined : place })}
        />
      )}
    </Stack>
  );
}
