import { instrumentKinds, recordInstrument } from '@larderbook/contracts';
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
import { instrumentFields, unitsOf, usualInstrument, usualTolerance, type InstrumentDraft } from './instrument-draft';

/** A thermometer, a scale or a meter; it counts as overdue until its first check. */
export function AddInstrument({ onClose }: { onClose: () => void }) {
  const { units } = useShop();
  const form = useId();
  const [instrumentId] = useState(newId);
  const [draft, setDraft] = useState<InstrumentDraft>(() => ({ name: '', ...usualInstrument('thermometer', units) }));
  const { send, busy, errors, problem } = useSend(recordInstrument, ({ name }) => {
    announce(`${name} is added. Check it before it is used.`);
    onClose();
  });
  const unitChoices = unitsOf(draft.kind, units);
  return (
    <Dialog
      title="Add an instrument"
      closeLabel="Add none"
      onClose={onClose}
      actions={
        <Button type="submit" form={form} look="primary" busy={busy && 'Adding the instrument…'}>
          Add the instrument
        </Button>
      }
    >
      <Form id={form} errors={errors} busy={busy} onSubmit={() => send({ instrumentId, ...instrumentFields(draft) })}>
        <Stack>
          <ChoiceField
            label="Kind"
            choices={instrumentKinds.map((kind) => ({ value: kind, name: kind.charAt(0).toUpperCase() + kind.slice(1) }))}
            value={draft.kind}
            onChange={(kind) => setDraft({ ...draft, ...usualInstrument(kind, units) })}
          />
          <TextField
            label="Name"
            hint="As it is called in the shop, with its number: “Probe thermometer 1”."
            maxLength={120}
            autoComplete="off"
            value={draft.name}
            error={errors.name}
            onChange={(name) => setDraft({ ...draft, name })}
          />
          {unitChoices.length > 1 && (
            <ChoiceField
              label="It reads in"
              choices={unitChoices.map((unit) => ({ value: unit, name: unit }))}
              value={draft.unit}
              error={errors.unit}
              onChange={(unit) => setDraft({ ...draft, unit, tolerance: usualTolerance(unit) })}
            />
          )}
          <NumberField
            label="May be off by"
            unit={`± ${draft.unit}`}
            decimals={3}
            value={draft.tolerance}
            error={errors.tolerance}
            hint={toleranceHint(draft.kind)}
            onChange={(tolerance) => setDraft({ ...draft, tolerance })}
          />
          <NumberField
            label="Checked every"
            unit="days"
            decimals={0}
            value={draft.days}
            error={errors.checkEveryDays}
            hint="As your plan or procedure says; a thermometer on the floor is usually checked weekly or daily."
            onChange={(days) => setDraft({ ...draft, days })}
          />
          {problem !== undefined && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}

const toleranceHint = (kind: InstrumentDraft['kind']): string =>
  kind === 'thermometer'
    ? 'FDA Food Code 4-203.11: a food thermometer is right within ± 2 °F, or ± 1 °C if it reads in °C.'
    : 'From the instrument’s label or papers.';
