import { asksForHumidity, lacksChillStart, lacksFreezingStart, recordsMoment, takenAs, type ControlPoint } from '@larderbook/contracts';
import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { SelectField } from '../../../ui/select-field';
import { Row, Stack } from '../../../ui/stack';
import type { TakenAs } from '../document/plan-words';
import { Sentences } from '../document/sentences';
import { ErrorsFields } from './errors-fields';
import { PieceField } from './piece-field';
import { PlausibleField } from './plausible-field';
import { ProbesField } from './probes-field';
import { SurroundingsField } from './surroundings-field';

type RecordedFieldsProps = {
  point: ControlPoint;
  others: ControlPoint[];
  errors: FieldErrors;
  onChange: (point: ControlPoint) => void;
  onAddChillStart: () => void;
};

const takenWords: Record<TakenAs, { name: string; detail: string }> = {
  value: { name: 'One value', detail: 'a temperature, pH, water activity' },
  curve: { name: 'A series of readings', detail: 'cooking, chilling, warming up' },
  weighings: { name: 'Weighings', detail: 'of what holds a restricted substance' },
  attestation: { name: 'A yes or no', detail: 'with what was seen' },
};

/** What the person at the control point is asked for, and what that depends on. */
export function RecordedFields({ point, others, errors, onChange, onAddChillStart }: RecordedFieldsProps) {
  const isChill = point.limits.some(({ limit }) => limit.kind === 'cooling');
  const isFermentation = point.limits.some(({ limit }) => limit.kind === 'degreeHours');
  const before = others.filter((other) => other.takenAs === 'curve' || recordsMoment(other));
  const asksOfCook = recordsMoment(point) || asksForHumidity(point);
  const isTemperature = point.takenAs === 'curve' || (point.takenAs === 'value' && point.limits.some(isOfTemperature));
  return (
    <Stack>
      <ChoiceField
        label="Recorded as"
        choices={takenAs.map((value) => ({ value, ...takenWords[value] }))}
        value={point.takenAs}
        error={errors.takenAs}
        onChange={(chosen) =>
          onChange({
            ...point,
            takenAs: chosen,
            ...(chosen !== 'curve' && { follows: undefined, probes: [], surroundings: undefined, piece: undefined }),
          })
        }
      />
      {point.takenAs === 'curve' && (
        <>
          <SelectField
            label="Its clock starts with"
            optional={!isChill && !isFermentation}
            hint="A chill is counted from the end of its cook, degree-hours from the recorded start of fermentation; without it the plan cannot be adopted."
            choices={[{ value: 'none', name: 'Nothing before it' }, ...before.map((other) => choiceOf(other, others))]}
            value={point.follows ?? 'none'}
            error={errors.follows ?? (point.follows ? undefined : isChill ? NO_COOK : isFermentation ? NO_START : undefined)}
            onChange={(chosen) => onChange({ ...point, follows: chosen === 'none' ? undefined : chosen })}
          />
          {lacksChillStart(point, others) && <NoChillStart onAdd={onAddChillStart} />}
          {lacksFreezingStart(point, others) && <Sentences said={[NO_FREEZING_START]} />}
          <ProbesField value={point.probes} error={errors.probes} onChange={(probes) => onChange({ ...point, probes })} />
          <SurroundingsField value={point.surroundings} errors={errors} onChange={(surroundings) => onChange({ ...point, surroundings })} />
          <PieceField value={point.piece} errors={errors} onChange={(piece) => onChange({ ...point, piece })} />
        </>
      )}
      {asksOfCook && (
        <SelectField
          label="It follows"
          optional={!asksForHumidity(point)}
          hint="The cook before it. What starts a fermentation follows nothing."
          choices={[{ value: 'none', name: 'Nothing' }, ...before.filter(isCurve).map((other) => choiceOf(other, others))]}
          value={point.follows ?? 'none'}
          error={errors.follows}
          onChange={(chosen) => onChange({ ...point, follows: chosen === 'none' ? undefined : chosen })}
        />
      )}
      <ErrorsFields key={point.takenAs} point={point} onChange={(stated) => onChange({ ...point, errors: stated })} />
      {isTemperature && <PlausibleField value={point.plausible} onChange={(plausible) => onChange({ ...point, plausible })} />}
    </Stack>
  );
}

const NO_COOK = 'Name the cook before this chill.';
const NO_START = 'Name what records the start of fermentation.';

const NO_FREEZING_START =
  'By the air of the freezer the time counts only from when the meat went in: add a control point that asks for the moment, or nothing is met.';

const isCurve = (point: ControlPoint): boolean => point.takenAs === 'curve';

const choiceOf = (before: ControlPoint, all: ControlPoint[]) => {
  const nameOf = ({ name }: ControlPoint) => name || 'without a name';
  const cook = all.find(({ controlPointId }) => controlPointId === before.follows);
  const recorded = `${cook ? `The end of ${nameOf(cook)}, and what` : 'What'} is recorded at ${nameOf(before)}`;
  return { value: before.controlPointId, name: isCurve(before) ? `The end of ${nameOf(before)}` : recorded };
};

function NoChillStart({ onAdd }: { onAdd: () => void }) {
  return (
    <Stack>
      <Sentences
        said={['Its limit asks how soon chilling begins after cooking, but no control point of the plan records when it began.']}
      />
      <Row>
        <Button onClick={onAdd}>Add “Into the chiller” before it</Button>
      </Row>
    </Stack>
  );
}

const isOfTemperature = ({ limit }: ControlPoint['limits'][number]): boolean => limit.kind === 'range' && limit.measured === 'temperature';
