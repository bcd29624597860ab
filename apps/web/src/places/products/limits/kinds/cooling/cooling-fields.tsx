import { Button } from '../../../../../ui/button';
import { ChoiceField } from '../../../../../ui/choice-field';
import { Stack } from '../../../../../ui/stack';
import { DurationField } from '../../duration-field';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import { noStage, type CoolingDraft } from './cooling-editor';
import { noPrinted } from '../../typed';
import { NumberedRows } from '../../numbered-rows';
import { PrintedField } from '../../printed-field';
import { useSay } from '../../../../../ui/voice';

/** Each stage goes from one temperature down to another in so much time. */
export function CoolingFields({ draft, errors, onChange }: FieldsOf<CoolingDraft>) {
  const say = useSay('limit-forms');
  const fromOwn = { value: 'stage' as const, name: say('clock-own') };
  const fromFirst = { value: 'start' as const, name: say('clock-first'), detail: say('clock-first-detail') };
  const fromCooking = { value: 'end of cooking' as const, name: say('clock-cooking'), detail: say('clock-cooking-detail') };
  const { stages } = draft;
  return (
    <Stack>
      <NumberedRows
        rows={stages}
        title={(number) => say('stage', { number })}
        removeLabel={(number) => say('remove-stage', { number })}
        onChange={(next) => onChange({ ...draft, stages: next })}
      >
        {(stage, i, put) => (
          <>
            <ChoiceField
              label={say('clock-starts')}
              value={stage.counted}
              onChange={(counted) => put({ ...stage, counted })}
              choices={i > 0 ? [fromOwn, fromFirst, fromCooking] : [fromOwn, fromCooking]}
            />
            {stage.counted !== 'end of cooking' && (
              <PrintedField
                label={say('from')}
                value={stage.from}
                error={errors[`stages.${i}.from`]}
                onChange={(from) => put({ ...stage, from })}
              />
            )}
            <PrintedField
              label={say('down-to')}
              value={stage.to}
              error={errors[`stages.${i}.to`]}
              onChange={(to) => put({ ...stage, to })}
            />
            <DurationField
              label={say('within')}
              value={stage.within}
              error={errors[`stages.${i}.withinSeconds`]}
              onChange={(within) => put({ ...stage, within })}
            />
          </>
        )}
      </NumberedRows>
      <Button
        onClick={() =>
          onChange({
            ...draft,
            stages: [...stages, { ...noStage, from: stages.at(-1)?.to ?? noPrinted }],
          })
        }
      >
        {say('add-stage')}
      </Button>
      <DurationField
        label={say('begins-within')}
        optional
        hint={say('begins-within-hint')}
        value={draft.startWithin}
        error={errors.startWithinSeconds}
        onChange={(startWithin) => onChange({ ...draft, startWithin })}
      />
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
