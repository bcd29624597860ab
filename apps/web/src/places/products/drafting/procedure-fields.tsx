import type { ControlPoint } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Columns, Stack } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { FrequencyField } from './frequency-field';

type ProcedureFieldsProps = { point: ControlPoint; errors: FieldErrors; onChange: (point: ControlPoint) => void };
type Monitoring = keyof ControlPoint['monitoring'];

const monitored: { name: Monitoring; label: string; hint: string }[] = [
  { name: 'what', label: 'What is measured', hint: 'The value, and where in the product.' },
  { name: 'how', label: 'How', hint: 'With which instrument, held how.' },
  { name: 'howOften', label: 'How often', hint: 'Often enough that a miss is seen before product leaves.' },
  { name: 'who', label: 'By whom', hint: 'The task, not the name of a person.' },
];

/** The four parts of a corrective action, 9 CFR 417.3(a). */
const fourParts =
  'Four things (9 CFR 417.3(a)): find and remove the cause, bring the control point under control, ' +
  'keep it from happening again, and let no unsafe product leave.';

/** Monitoring, the corrective action that is ready beforehand, and verification (9 CFR 417.2(c)(4), (5) and (7)). */
export function ProcedureFields({ point, errors, onChange }: ProcedureFieldsProps) {
  return (
    <Stack>
      <Columns least={20}>
        {monitored.map(({ name, label, hint }) => (
          <TextArea
            key={name}
            label={label}
            hint={hint}
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
        label="When the limit is missed"
        rows={4}
        hint={fourParts}
        value={point.correctiveAction}
        error={errors.correctiveAction}
        onChange={(correctiveAction) => onChange({ ...point, correctiveAction })}
      />
      <TextArea
        label="Verification"
        optional
        rows={3}
        hint="Checks of the instruments, watching the work, review of the records: what, and how often."
        value={point.verification}
        error={errors.verification}
        onChange={(verification) => onChange({ ...point, verification })}
      />
    </Stack>
  );
}
