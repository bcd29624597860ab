import type { EstablishmentFields } from '@larderbook/contracts';
import { useMemo } from 'react';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { timeWords } from '../../../ui/moment';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import { useNow } from '../../../ui/time-left';
import { unitsWords } from './say-habits';
import { zoneChoices } from './time-zones';

type Habits = Pick<EstablishmentFields, 'timeZone' | 'units' | 'paper'>;
type HabitsFieldsProps<T extends Habits> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

/** Time zone, units on screen and paper. */
export function HabitsFields<T extends Habits>({ value, errors, onChange }: HabitsFieldsProps<T>) {
  const zones = useMemo(() => zoneChoices(value.timeZone), [value.timeZone]);
  return (
    <Stack>
      <SelectField
        label="Time zone"
        hint={<WallClock zone={value.timeZone} />}
        choices={zones}
        value={value.timeZone}
        error={errors.timeZone}
        onChange={(timeZone) => onChange({ ...value, timeZone })}
      />
      <ChoiceField
        label="Units on screen"
        choices={[
          { value: 'US', name: unitsWords.US },
          { value: 'metric', name: unitsWords.metric },
        ]}
        value={value.units}
        error={errors.units}
        onChange={(units) => onChange({ ...value, units })}
      />
      <ChoiceField
        label="Paper in the printer"
        choices={[
          { value: 'Letter', name: 'Letter', detail: '8½ × 11 in' },
          { value: 'A4', name: 'A4', detail: '210 × 297 mm' },
        ]}
        value={value.paper}
        error={errors.paper}
        onChange={(paper) => onChange({ ...value, paper })}
      />
    </Stack>
  );
}

/** The proof that the zone is right: what the clock on the wall shows. */
function WallClock({ zone }: { zone: string }) {
  const now = useNow(5_000);
  return <>The clock on your wall should show {timeWords(now, zone)} now.</>;
}
