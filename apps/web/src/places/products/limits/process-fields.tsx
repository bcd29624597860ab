import { NumberField } from '../../../ui/number-field';
import { AnalysedFields } from './analysed-fields';
import { DegreeHoursFields } from './degree-hours-fields';
import type { FieldsOf } from './fields-of';
import { FreezingFields } from './freezing-fields';
import { GrowthFields } from './growth-fields';
import { LethalityFields } from './lethality-fields';
import type { ProcessDraft } from './process-draft';

/** The fields of a limit on what a process does as a whole. */
export function ProcessFields({ draft, errors, onChange }: FieldsOf<ProcessDraft>) {
  switch (draft.kind) {
    case 'lethality':
      return <LethalityFields draft={draft} errors={errors} onChange={onChange} />;
    case 'growth':
      return <GrowthFields draft={draft} errors={errors} onChange={onChange} />;
    case 'degreeHours':
      return <DegreeHoursFields draft={draft} errors={errors} onChange={onChange} />;
    case 'weightLoss':
      return (
        <NumberField
          label="Lost at least"
          hint="Of the weight at the start."
          decimals={2}
          unit="%"
          value={draft.percent}
          error={errors.percent}
          onChange={(percent) => onChange({ ...draft, percent })}
        />
      );
    case 'freezing':
      return <FreezingFields draft={draft} errors={errors} onChange={onChange} />;
    case 'figure':
      return <AnalysedFields draft={draft} errors={errors} onChange={onChange} />;
  }
}
