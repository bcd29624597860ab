import type { ControlPoint, PlanContent } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { ChoiceField } from '../../../ui/choice-field';
import { SelectField } from '../../../ui/select-field';
import { Columns } from '../../../ui/stack';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';

type PointFieldsProps = {
  point: ControlPoint;
  steps: PlanContent['steps'];
  errors: FieldErrors;
  onChange: (point: ControlPoint) => void;
};

export function PointFields({ point, steps, errors, onChange }: PointFieldsProps) {
  const say = useSay('plan-points');
  return (
    <>
      <Columns>
        <TextField
          label={say('name')}
          autoComplete="off"
          maxLength={120}
          value={point.name}
          error={errors.name}
          onChange={(name) => onChange({ ...point, name })}
        />
        <SelectField
          label={say('at-step')}
          choices={steps.map(({ stepId, name }, i) => ({ value: stepId, name: say('numbered-step', { number: i + 1, name }) }))}
          value={point.stepId}
          error={errors.stepId}
          onChange={(stepId) => onChange({ ...point, stepId })}
        />
      </Columns>
      <ChoiceField
        label={say('kind')}
        value={point.kind}
        onChange={(kind) => onChange({ ...point, kind })}
        choices={[
          { value: 'critical', name: say('critical'), detail: say('critical-detail') },
          { value: 'prerequisite', name: say('prerequisite'), detail: say('prerequisite-detail') },
        ]}
      />
      <TextArea
        label={say('hazard')}
        rows={2}
        value={point.hazard}
        error={errors.hazard}
        onChange={(hazard) => onChange({ ...point, hazard })}
      />
    </>
  );
}
