import { instrumentKinds, recordInstrument } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useId, useState } from 'react';
import { useSend } from '../../../api/use-send';
import { useShop } from '../../../api/use-shop';
import { newId } from '../../../outbox/new-id';
import { announce } from '../../../ui/announcer';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { Dialog } from '../../../ui/dialog';
import { Form } from '../../../ui/form';
import { NumberField } from '../../../ui/number-field';
import { Problem } from '../../../ui/problem';
import { Stack } from '../../../ui/stack';
import { TextField } from '../../../ui/text-field';
import { useSay } from '../../../ui/voice';
import { instrumentFields, unitsOf, usualInstrument, usualTolerance, type InstrumentDraft } from './instrument-draft';

/** A thermometer, a scale or a meter; it counts as overdue until its first check. */
export function AddInstrument({ onClose }: { onClose: () => void }) {
  const say = useSay('instruments');
  const sayShared = useSay('shared');
  const { units } = useShop();
  const form = useId();
  const [instrumentId] = useState(newId);
  const [draft, setDraft] = useState<InstrumentDraft>(() => ({ name: '', ...usualInstrument('thermometer', units) }));
  const { send, busy, errors, problem } = useSend(recordInstrument, ({ name }) => {
    announce(say('added', { name }));
    onClose();
  });
  const unitChoices = unitsOf(draft.kind, units);
  return (
    <Dialog
      title={say('add')}
      onClose={onClose}
      actions={
        <Button type="submit" form={form} look="primary" busy={busy}>
          {sayShared('save')}
        </Button>
      }
    >
      <Form id={form} errors={errors} busy={busy} onSubmit={() => send({ instrumentId, ...instrumentFields(draft) })}>
        <Stack>
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
          {problem !== undefined && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}
