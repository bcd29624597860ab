import { ChoiceField } from '../../../ui/choice-field';
import { useSay } from '../../../ui/voice';
import type { Instrument } from './use-instrument';

export function InstrumentChoice({ instrument, onChosen }: { instrument: Instrument; onChosen: () => void }) {
  const say = useSay('lot-forms');
  const none = { value: 'none', name: say('none-named'), detail: say('none-named-detail') };
  const choices = instrument.all.map(({ instrumentId, name, overdue }) => ({
    value: instrumentId,
    name,
    detail: overdue ? say('overdue') : undefined,
  }));
  return (
    <ChoiceField
      label={say('which-instrument')}
      hint={say('device-remembers')}
      choices={[...choices, none]}
      value={instrument.chosen?.instrumentId ?? 'none'}
      onChange={(value) => {
        instrument.choose(value === 'none' ? undefined : value);
        onChosen();
      }}
    />
  );
}
