import type { ControlPoint } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Columns, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { FrequencyField } from './frequency-field';
import { useSay } from '../../../ui/voice';

type ProcedureFieldsProps = { point: ControlPoint; errors: FieldErrors; onChange: (point: ControlPoint) => void };

const monitored = [
  { name: 'what', code: 'what' },
  { name: 'how', code: 'how' },
  { name: 'howOften', code: 'how-often' },
  { name: 'who', code: 'who' },
] as const;

/** 9 CFR 417.2(c)(4), (5) and (7). */
export function ProcedureFields({ point, errors, onChange }: ProcedureFieldsProps) {
  const say = useSay('plan-points');
  return (
    <Stack>
      <Columns least={20}>
        {monitored.map(({ name, code }) => (
          <TextArea
            key={name}
            label={say(code)}
            hint={say(`${code}-hint`)}
            rows={2}
            value={point.monitoring[name]}
            error={errors[`monitoring.${name}`]}
            onChange={(text) => onChange({ ...point, monitoring: { ...point.monitoring, [name]: text } })}
          />
        ))}
      </Columns>
      {point.takenAs !== 'weighings' && (
        <FrequencyField value={point.frequency} errors={errors} onChange={(frequency) => onChange({ ...point, frequency })} />
      )}
      <TextArea
        label={say('when-missed')}
        rows={4}
        hint={say('four-parts')}
        value={point.correctiveAction}
        error={errors.correctiveAction}
        onChange={(correctiveAction) => onChange({ ...point, correctiveAction })}
      />
      <TextArea
        label={say('verification')}
        optional
        rows={3}
        hint={say('verification-hint')}
        value={point.verification}
        error={errors.verification}
        onChange={(verification) => onChange({ ...point, verification })}
      />
    </Stack>
  );
}
