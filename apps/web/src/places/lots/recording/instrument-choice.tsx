import { ChoiceField } from '../../../ui/choice-field';
import type { Instrument } from './use-instrument';

/** Which instrument this device records with from now on. */
export function InstrumentChoice({ instrument, onChosen }: { instrument: Instrument; onChosen: () => void }) {
  const none = { value: 'none', name: 'None named', detail: 'What you record will say so' };
  const choices = instrument.all.map(({ instrumentId, name, overdue }) => ({
    value: instrumentId,
    name,
    detail: overdue ? 'overdue for its check' : undefined,
  }));
  return (
    <ChoiceField
      label="Which instrument?"
      hint="This device remembers it."
      choices={[...choices, none]}
      value={instrument.chosen?.instrumentId ?? 'none'}
      onChange={(value) => {
        instrument.choose(value === 'none' ? undefined : value);
        onChosen();
      }}
    />
  );
}
