import type { EstablishmentFields } from '@larderbook/contracts';
import { useMemo } from 'react';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import { useNow } from '../../../ui/time-left';
import { useClock, useSay } from '../../../ui/voice';
import { zoneChoices } from './time-zones';

type Habits = Pick<EstablishmentFields, 'timeZone' | 'units' | 'paper'>;
type HabitsFieldsProps<T extends Habits> = { value: T; errors: FieldErrors; onChange: (value: T) => void };

export function HabitsFields<T extends Habits>({ value, errors, onChange }: HabitsFieldsProps<T>) {
  const say = useSay('shop');
  const zones = useMemo(() => zoneChoices(value.timeZone), [value.timeZone]);
  return (
    <Stack>
      <SelectField
        label={say('time-zone')}
        hint={<WallClock zone={value.timeZone} />}
        choices={zones}
        value={value.timeZone}
        error={errors.timeZone}
        onChange={(timeZone) => onChange({ ...value, timeZone })}
      />
      <ChoiceField
        label={say('units')}
        choices={[
          { value: 'US', name: say('units-us') },
          { value: 'metric', name: say('units-metric') },
        ]}
        value={value.units}
        error={errors.units}
        onChange={(units) => onChange({ ...value, units })}
      />
      <ChoiceField
        label={say('paper')}
        choices={[
          { value: 'Letter', name: say('paper-letter') },
          { value: 'A4', name: say('paper-a4') },
        ]}
        value={value.paper}
        error={errors.paper}
        onChange={(paper) => onChange({ ...value, paper })}
      />
    </Stack>
  );
}

function WallClock({ zone }: { zone: string }) {
  const say = useSay('shop');
  const time = useClock(zone).time(useNow(5_000));
  return <>{say('wall-clock', { time })}</>;
}
