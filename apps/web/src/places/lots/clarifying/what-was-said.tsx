import { clarificationsOf, wordOf, type ControlPointOnLot } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { SaidTable } from '../../../ui/said-table';
import { Section } from '../../../ui/section';
import { useFigures, useSay } from '../../../ui/voice';
import { enteredValue } from '../say/entered';
import type { ToClarify } from './to-clarify';

type Said = ReturnType<typeof clarificationsOf<ControlPointOnLot['readings'][number]>>[number];

export function WhatWasSaid({ point, onClarify }: { point: ControlPointOnLot; onClarify?: (of: ToClarify) => void }) {
  const say = useSay('judging');
  const sayEntry = useSay('entries');
  const figures = useFigures();
  const { zone } = useShop();
  const said = clarificationsOf(point.readings);
  if (said.length === 0) return null;
  const soFar = ({ word, reason }: Said) => say('said-so-far', { word: sayEntry(codeOf('word', word)), reason });
  const { controlPointId } = point.controlPoint;
  return (
    <Section title={say('what-was-said')}>
      <SaidTable
        said={said}
        sayReadings={({ readings }) => readings.map(({ entered }) => enteredValue(entered, sayEntry, figures)).join(', ')}
        zone={zone}
        change={(one) =>
          onClarify &&
          counts(one) && <Button onClick={() => onClarify(takenBack(controlPointId, one, soFar(one)))}>{say('take-back')}</Button>
        }
      />
    </Section>
  );
}

const counts = ({ clarificationId, readings }: Said): boolean => stillSaid(clarificationId, readings).length > 0;

const stillSaid = (clarificationId: string, readings: Said['readings']) =>
  readings.filter(
    (reading) =>
      reading.amendedBy === undefined &&
      wordOf(reading) !== undefined &&
      reading.clarifications?.at(-1)?.clarificationId === clarificationId,
  );

const takenBack = (controlPointId: string, { clarificationId, readings }: Said, soFar: string): ToClarify => ({
  controlPointId,
  said: soFar,
  readingIds: stillSaid(clarificationId, readings).map(({ readingId }) => readingId),
  words: ['as recorded'],
});
