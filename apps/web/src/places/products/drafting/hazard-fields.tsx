import { hazardKinds } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import { hazardKindWords, type Hazard } from '../document/plan-words';
import css from './drafting.module.css';

type HazardFieldsProps = {
  hazard: Hazard;
  isNew: boolean;
  number: number;
  errors: FieldErrors;
  onChange: (hazard: Hazard) => void;
  onRemove: () => void;
};

/** One hazard of a step: what it is, whether it is likely to occur, why, and what controls it. */
export function HazardFields({ hazard, isNew, number, errors, onChange, onRemove }: HazardFieldsProps) {
  const called = hazard.what || `hazard ${number}`;
  return (
    <li className={css.slip}>
      <div className={css.slipHead}>
        <h3>Hazard {number}</h3>
        <Button look="quiet" aria-label={`Remove ${called}`} onClick={onRemove}>
          Remove
        </Button>
      </div>
      <ChoiceField
        label="Kind"
        choices={hazardKinds.map((value) => ({ value, name: hazardKindWords[value] }))}
        value={hazard.kind}
        error={errors.kind}
        onChange={(kind) => onChange({ ...hazard, kind })}
      />
      <TextField
        label="What it is"
        autoFocus={isNew}
        autoComplete="off"
        value={hazard.what}
        error={errors.what}
        onChange={(what) => onChange({ ...hazard, what })}
      />
      <ChoiceField
        label="Is it reasonably likely to occur?"
        hint="Likely: a prudent producer would control it; it has happened or reasonably could (9 CFR 417.2(a))."
        choices={[
          { value: 'yes', name: 'Likely', detail: 'it needs a critical control point' },
          { value: 'no', name: 'Not likely', detail: 'say what makes it so' },
        ]}
        value={hazard.likely ? 'yes' : 'no'}
        onChange={(answer) => onChange({ ...hazard, likely: answer === 'yes' })}
      />
      <TextArea
        label="Because"
        rows={2}
        value={hazard.because}
        error={errors.because}
        onChange={(because) => onChange({ ...hazard, because })}
      />
      <TextArea
        label="Control"
        rows={2}
        hint="What keeps it away. Where a control point at a later step does, name it as it is called there."
        value={hazard.control}
        error={errors.control}
        onChange={(control) => onChange({ ...hazard, control })}
      />
    </li>
  );
}
