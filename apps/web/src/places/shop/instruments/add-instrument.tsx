import { instrumentKinds, recordInstrument } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useState } from 'react';
import { useSend } from '../../../api/use-send';
import { useShop } from '../../../api/use-shop';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { ChoiceField } from '../../../ui/choice-field';
import { FormDialog } from '../../../ui/form-dialog';
import { NumberField } from '../../../ui/number-field';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { instrumentFields, unitsOf, usualInstrument, usualTolerance, type InstrumentDraft } from './instrument-draft';

/** It counts as overdue until its first check. */
export function AddInstrument({ onClose }: { onClose: () => void }) {
  const say = useSay('instruments');
  const { units } = useShop();
  const [instrumentId] = useState(newId);
  const [draft, setDraft] = useState<InstrumentDraft>(() => ({ name: '', ...usualInstrument('thermometer', units) }));
  const { send, busy, errors, problem } = useSend(recordInstrument, ({ name }) => {
    announce(say('added', { name }));
    onClose();
  });
  const unitChoices = unitsOf(draft.kind, units);
  return (
    <FormDialog
      title={say('add')}
      errors={errors}
      problem={problem}
      busy={busy}
      onSave={() => send({ instrumentId, ...instrumentFields(draft) })}
      onClose={onClose}
    >
      <ChoiceField
        label={say('kind')}
        choices={instrumentKinds.map((kind) => ({ value: kind, name: say(codeOf('kind', kind)) }))}
        value={draft.kind}
        onChange={(kind) => setDraft({ ...draft, ...usualInstrument(kind, units) })}
      />
      <TextField
        label={say('name')}
        hint={say('name-hint')}
        maxLength={120}
        autoComplete="off"
        value={draft.name}
        error={errors.name}
        onChange={(name) => setDraft({ ...draft, name })}
      />
      {unitChoices.length > 1 && (
        <ChoiceField
          label={say('reads-in')}
          choices={unitChoices.map((unit) => ({ value: unit, name: unit }))}
          value={draft.unit}
          error={errors.unit}
          onChange={(unit) => setDraft({ ...draft, unit, tolerance: usualTolerance(unit) })}
        />
      )}
      <NumberField
        label={say('tolerance')}
        unit={`± ${draft.unit}`}
        decimals={3}
        value={draft.tolerance}
        error={errors.tolerance}
        hint={say(draft.kind === 'thermometer' ? 'tolerance-of-code' : 'tolerance-of-label')}
        onChange={(tolerance) => setDraft({ ...draft, tolerance })}
      />
      <NumberField
        label={say('every-days')}
        unit={say('days')}
        decimals={0}
        value={draft.days}
        error={errors.checkEveryDays}
        hint={say('every-days-hint')}
        onChange={(days) => setDraft({ ...draft, days })}
      />
    </FormDialog>
  );
}
