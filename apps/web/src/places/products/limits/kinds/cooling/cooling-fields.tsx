import { Button } from '../../../../../ui/button';
import { ChoiceField } from '../../../../../ui/choice-field';
import { Stack } from '../../../../../ui/stack';
import { DurationField } from '../../duration-field';
import type { FieldsOf } from '../../fields-of';
import { GapField } from '../../gap-field';
import { noStage, type CoolingDraft, type StageDraft } from './cooling-editor';
import { noPrinted } from '../../typed';
import css from '../../limits.module.css';
import { PrintedField } from '../../printed-field';

const fromOwn = { value: 'stage' as const, name: 'As the core falls below its upper temperature' };
const fromFirst = { value: 'start' as const, name: 'With the first stage', detail: 'so much in all' };
const fromCooking = {
  value: 'end of cooking' as const,
  name: 'When cooking ends',
  detail: 'whatever the core shows then; the end has to be recorded',
};

/** One stage or several, each from one temperature down to another in so much time. */
export function CoolingFields({ draft, errors, onChange }: FieldsOf<CoolingDraft>) {
  const { stages } = draft;
  const put = (i: number, stage: StageDraft) => onChange({ ...draft, stages: stages.with(i, stage) });
  return (
    <Stack>
      <ol className={css.rows}>
        {stages.map((stage, i) => (
          <li key={i} className={css.row}>
            <div className={css.rowHead}>
              <h3>Stage {i + 1}</h3>
              {stages.length > 1 && (
                <Button
                  look="quiet"
                  aria-label={`Remove stage ${i + 1}`}
                  onClick={() => onChange({ ...draft, stages: stages.toSpliced(i, 1) })}
                >
                  Remove
                </Button>
              )}
            </div>
            <ChoiceField
              label="Clock starts"
              value={stage.counted}
              onChange={(counted) => put(i, { ...stage, counted })}
              choices={i > 0 ? [fromOwn, fromFirst, fromCooking] : [fromOwn, fromCooking]}
            />
            {stage.counted !== 'end of cooking' && (
              <PrintedField
                label="From"
                value={stage.from}
                error={errors[`stages.${i}.from`]}
                onChange={(from) => put(i, { ...stage, from })}
              />
            )}
            <PrintedField label="Down to" value={stage.to} error={errors[`stages.${i}.to`]} onChange={(to) => put(i, { ...stage, to })} />
            <DurationField
              label="Within"
              value={stage.within}
              error={errors[`stages.${i}.withinSeconds`]}
              onChange={(within) => put(i, { ...stage, within })}
            />
          </li>
        ))}
      </ol>
      <Button
        onClick={() =>
          onChange({
            ...draft,
            stages: [...stages, { ...noStage, from: stages.at(-1)?.to ?? noPrinted }],
          })
        }
      >
        Add a stage
      </Button>
      <DurationField
        label="Chilling begins within"
        optional
        hint="Of the end of cooking, where the source asks for it."
        value={draft.startWithin}
        error={errors.startWithinSeconds}
        onChange={(startWithin) => onChange({ ...draft, startWithin })}
      />
      <GapField draft={draft} errors={errors} onChange={onChange} />
    </Stack>
  );
}
