import { asksForHumidity, lacksChillStart, lacksFreezingStart, recordsMoment, takenAs, type ControlPoint } from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';
import type { FieldErrors } from '../../../api/check';
import { Button } from '../../../ui/button';
import { ChoiceField } from '../../../ui/choice-field';
import { FindField } from '../../../ui/find-field';
import { Row, Stack } from '../../../ui/stack';

import { Sentences } from '../document/sentences';
import { ErrorsFields } from './errors-fields';
import { PieceField } from './piece-field';
import { PlausibleField } from './plausible-field';
import { ProbesField } from './probes-field';
import { SurroundingsField } from './surroundings-field';
import { useSay } from '../../../ui/voice';
import type { Say, WordsOf } from '@larderbook/messages';

type RecordedFieldsProps = {
  point: ControlPoint;
  others: ControlPoint[];
  errors: FieldErrors;
  onChange: (point: ControlPoint) => void;
  onAddChillStart: () => void;
};

export function RecordedFields({ point, others, errors, onChange, onAddChillStart }: RecordedFieldsProps) {
  const say = useSay('plan-points');
  const isChill = point.limits.some(({ limit }) => isOfKind(limit, 'cooling'));
  const isFermentation = point.limits.some(({ limit }) => isOfKind(limit, 'degreeHours'));
  const before = others.filter((other) => other.takenAs === 'curve' || recordsMoment(other));
  const asksOfCook = recordsMoment(point) || asksForHumidity(point);
  const isTemperature = point.takenAs === 'curve' || (point.takenAs === 'value' && point.limits.some(isOfTemperature));
  return (
    <Stack>
      <ChoiceField
        label={say('recorded-as')}
        choices={takenAs.map((value) => ({ value, name: say(`taken-${value}`), detail: say(`taken-${value}-detail`) }))}
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
          <FindField
            label={say('clock-starts-with')}
            optional={!isChill && !isFermentation}
            hint={say('clock-hint')}
            choices={[{ value: 'none', name: say('nothing-before') }, ...before.map((other) => choiceOf(other, others, say))]}
            value={point.follows ?? 'none'}
            error={
              errors.follows ??
              (point.follows ? undefined : isChill ? say('no-cook') : isFermentation ? say('no-fermentation-start') : undefined)
            }
            onChange={(chosen) => onChange({ ...point, follows: chosen === 'none' ? undefined : chosen })}
          />
          {lacksChillStart(point, others) && <NoChillStart onAdd={onAddChillStart} />}
          {lacksFreezingStart(point, others) && <Sentences said={[say('no-freezing-start')]} />}
          <ProbesField value={point.probes} error={errors.probes} onChange={(probes) => onChange({ ...point, probes })} />
          <SurroundingsField value={point.surroundings} errors={errors} onChange={(surroundings) => onChange({ ...point, surroundings })} />
          <PieceField value={point.piece} errors={errors} onChange={(piece) => onChange({ ...point, piece })} />
        </>
      )}
      {asksOfCook && (
        <FindField
          label={say('it-follows')}
          optional={!asksForHumidity(point)}
          hint={say('follows-hint')}
          choices={[{ value: 'none', name: say('nothing') }, ...before.filter(isCurve).map((other) => choiceOf(other, others, say))]}
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

const isCurve = (point: ControlPoint): boolean => point.takenAs === 'curve';

const choiceOf = (before: ControlPoint, all: ControlPoint[], say: Say<WordsOf<'plan-points'>>) => {
  const nameOf = ({ name }: ControlPoint) => name || say('without-a-name');
  const point = nameOf(before);
  const cook = all.find(({ controlPointId }) => controlPointId === before.follows);
  const recorded = cook ? say('end-and-recorded', { cook: nameOf(cook), point }) : say('recorded-at', { point });
  return { value: before.controlPointId, name: isCurve(before) ? say('end-of', { point }) : recorded };
};

function NoChillStart({ onAdd }: { onAdd: () => void }) {
  const say = useSay('plan-points');
  return (
    <Stack>
      <Sentences said={[say('no-chill-start')]} />
      <Row>
        <Button onClick={onAdd}>{say('add-chill-start')}</Button>
      </Row>
    </Stack>
  );
}

const isOfTemperature = ({ limit }: ControlPoint['limits'][number]): boolean =>
  isOfKind(limit, 'range') && limit.measured === 'temperature';
