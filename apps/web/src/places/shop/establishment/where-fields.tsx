import type { EstablishmentFields } from '@larderbook/contracts';
import { placesIn, publishedJurisdictions } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';

export type Where = Pick<EstablishmentFields, 'jurisdiction' | 'place' | 'limitSet'>;
type WhereFieldsProps<T extends Where> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

const notSaid = { value: 'not said', name: 'Not said' } as const;
const jurisdictions = [notSaid, ...publishedJurisdictions.map((value) => ({ value, name: value }))];

/** Whose published limits count, and where within it some are told apart. Moving takes the place and edition along. */
export function WhereFields<T extends Where>({ value, errors, onChange }: WhereFieldsProps<T>) {
  const places = value.jurisdiction ? placesIn[value.jurisdiction] : [];
  return (
    <Stack>
      <SelectField
        label="Whose published limits count"
        choices={jurisdictions}
        value={value.jurisdiction ?? notSaid.value}
        hint="Decides which limits are shown for a product. Nothing is assumed until you say it."
        error={errors.jurisdiction}
        onChange={(chosen) => {
          const jurisdiction = chosen === notSaid.value ? undefined : chosen;
          onChange({ ...value, jurisdiction, place: undefined, limitSet: undefined });
        }}
      />
      {places.length > 0 && (
        <SelectField
          label="Where within it"
          hint="Some of its limits count in one of them alone."
          choices={[notSaid, ...places.map((place) => ({ value: place, name: sayPlace(place) }))]}
          value={value.place ?? notSaid.value}
          error={errors.place}
          onChange={(place) => onChange({ ...value, place: place === notSaid.value ? undefined : place })}
        />
      )}
    </Stack>
  );
}

const sayPlace = (place: string): string => place.charAt(0).toUpperCase() + place.slice(1);
