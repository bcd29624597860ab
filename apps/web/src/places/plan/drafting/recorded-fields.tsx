import { takenAs, type ControlPoint } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { SelectField } from '../../../ui/select-field';
import { Stack } from '../../../ui/stack';
import type { TakenAs } from '../document/plan-words';
import { ErrorField } from './error-field';
import { PlausibleField } from './plausible-field';
import { ProbesField } from './probes-field';
import { SurroundingsField } from './surroundings-field';

type RecordedFieldsProps = {
  point: ControlPoint; others: ControlPoint[]; errors: FieldErrors; onChange: (point: ControlPoint) => void;
};

const takenWords: Record<TakenAs, { name: string; detail: string }> = {
  value: { name: 'One value', detail: 'a temperature, pH, water activity' },
  curve: { name: 'A series of readings', detail: 'cooking, chilling, warming up' },
  weighings: { name: 'Weighings', detail: 'of what holds a restricted substance' },
  attestation: { name: 'A yes or no', detail: 'with what was seen' },
};

/** What the person at the control point is asked for, and what that depends on. */
export function RecordedFields({ point, others, errors, onChange }: RecordedFieldsProps) {
  const isChill = point.limits.some(({ limit }) => limit.kind === 'cooling');
  const cooks = others.filter((other) => other.takenAs === 'curve');
  const isTemperature = point.takenAs === 'curve' || (point.takenAs === 'value' && point.limits.some(isOfTemperature));
  return (
    <Stack>
      <ChoiceField
        label="Recorded as" choices={takenAs.map((value) => ({ value, ...takenWords[value] }))} value={point.takenAs}
        error={errors.takenAs}
        onChange={(chosen) => onChange({
          ...point, takenAs: chosen, ...(chosen !== 'curve' && { follows: undefined, probes: [], surroundings: undefined }),
        })}
      />
      {point.takenAs === 'curve' && (
        <>
          <SelectField
            label="Its clock starts at the end of" optional={!isChill}
            hint="A chill is counted from the end of its cook; without it the plan cannot be adopted."
            choices={[{ value: 'none', name: 'Nothing before it' }, ...cooks.map(choiceOf)]}
            value={point.follows ?? 'none'}
            error={errors.follows ?? (isChill && !point.follows ? 'Name the cook before this chill.' : undefined)}
            onChange={(chosen) => onChange({ ...point, follows: chosen === 'none' ? undefined : chosen })}
          />
          <ProbesField
            value={point.probes} error={errors.probes} onChange={(probes) => onChange({ ...point, probes })}
          />
          <SurroundingsField
            value={point.surroundings} errors={errors} onChange={(surroundings) => onChange({ ...point, surroundings })}
          />
        </>
      )}
      {isTemperature && (
        <>
          <ErrorField
            value={point.thermometerError} onChange={(thermometerError) => onChange({ ...point, thermometerError })}
          />
          <PlausibleField value={point.plausible} onChange={(plausible) => onChange({ ...point, plausible })} />
        </>
      )}
    </Stack>
  );
}

const choiceOf = ({ controlPointId, name }: ControlPoint) => ({
  value: controlPointId, name: name || 'Without a name',
});

const isOfTemperature = ({ limit }: ControlPoint['limits'][number]): boolean =>
  limit.kind === 'range' && limit.measured === 'temperature';
