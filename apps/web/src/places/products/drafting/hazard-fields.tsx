import { hazardKinds } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { TextArea } from '../../../ui/text-area';
import { TextField } from '../../../ui/text-field';
import type { Hazard } from '../document/plan-words';
import css from './drafting.module.css';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

type HazardFieldsProps = {
  hazard: Hazard;
  isNew: boolean;
  number: number;
  errors: FieldErrors;
  onChange: (hazard: Hazard) => void;
  onRemove: () => void;
};

export function HazardFields({ hazard, isNew, number, errors, onChange, onRemove }: HazardFieldsProps) {
  const sayShared = useSay('shared');
  const say = useSay('plan-drafts');
  const sayPlans = useSay('plans');
  const called = hazard.what || say('hazard-numbered', { number });
  return (
    <li className={css.slip}>
      <div className={css.slipHead}>
        <h3>{say('hazard-numbered', { number })}</h3>
        <Button look="quiet" aria-label={say('remove-named', { name: called })} onClick={onRemove}>
          {sayShared('remove')}
        </Button>
      </div>
      <ChoiceField
        label={say('kind')}
        choices={hazardKinds.map((value) => ({ value, name: sayPlans(codeOf('hazard', value)) }))}
        value={hazard.kind}
        error={errors.kind}
        onChange={(kind) => onChange({ ...hazard, kind })}
      />
      <TextField
        label={say('what-it-is')}
        autoFocus={isNew}
        autoComplete="off"
        value={hazard.what}
        error={errors.what}
        onChange={(what) => onChange({ ...hazard, what })}
      />
      <ChoiceField
        label={say('is-it-likely')}
        hint={say('likely-hint')}
        choices={[
          { value: 'yes', name: sayPlans('likely'), detail: say('needs-ccp') },
          { value: 'no', name: sayPlans('not-likely'), detail: say('what-makes-it-so') },
        ]}
        value={hazard.likely ? 'yes' : 'no'}
        onChange={(answer) => onChange({ ...hazard, likely: answer === 'yes' })}
      />
      <TextArea
        label={say('because')}
        rows={2}
        value={hazard.because}
        error={errors.because}
        onChange={(because) => onChange({ ...hazard, because })}
      />
      <TextArea
        label={say('control')}
        rows={2}
        hint={say('control-hint')}
        value={hazard.control}
        error={errors.control}
        onChange={(control) => onChange({ ...hazard, control })}
      />
    </li>
  );
}
