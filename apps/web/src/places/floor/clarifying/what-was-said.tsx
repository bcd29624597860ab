import { clarificationsOf, wordOf, type ControlPointOnLot } from '@larderbook/contracts';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Moment } from '../../../ui/moment';
import { Section } from '../../../ui/section';
import { Table } from '../../../ui/table';
import { sayEntered } from '../say/say-entered';
import type { ToClarify } from './to-clarify';

type Said = ReturnType<typeof clarificationsOf<ControlPointOnLot['readings'][number]>>[number];

/** What people said of readings, who, when and why; what still counts can be taken back. */
export function WhatWasSaid({ point, onClarify }: { point: ControlPointOnLot; onClarify?: (of: ToClarify) => void }) {
  const { zone } = useShop();
  const said = clarificationsOf(point.readings);
  if (said.length === 0) return null;
  const { controlPointId } = point.controlPoint;
  return (
    <Section title="What was said of the readings">
      <Table
        caption="What was said of the readings"
        captionUnseen
        rows={said}
        rowKey={({ clarificationId }) => clarificationId}
        columns={[
          { head: 'Readings', cell: ({ readings }) => readings.map(({ entered }) => sayEntered(entered)).join(', ') },
          { head: 'Said to be', cell: ({ word }) => <strong>{word}</strong> },
          { head: 'Why', cell: ({ reason }) => reason },
          { head: 'Who, when', cell: ({ made }) => <Who name={made.name} at={made.recordedAt} zone={zone} /> },
          {
            head: 'Change',
            cell: (one) =>
              onClarify &&
              counts(one) && <Button onClick={() => onClarify(takenBack(controlPointId, one))}>Take back</Button>,
          },
        ]}
      />
    </Section>
  );
}

const Who = ({ name, at, zone }: { name: string; at: string; zone: string }) => (
  <>
    {name}, <Moment at={at} zone={zone} />
  </>
);

/** Nothing newer was said of one of its readings. */
const counts = ({ clarificationId, readings }: Said): boolean => stillSaid(clarificationId, readings).length > 0;

const stillSaid = (clarificationId: string, readings: Said['readings']) =>
  readings.filter(
    (reading) =>
      reading.amendedBy === undefined &&
      wordOf(reading) !== undefined &&
      reading.clarifications?.at(-1)?.clarificationId === clarificationId,
  );

const takenBack = (controlPointId: string, { clarificationId, word, reason, readings }: Said): ToClarify => ({
  controlPointId,
  said: `Said so far: ${word}. ${reason}`,
  readingIds: stillSaid(clarificationId, readings).map(({ readingId }) => readingId),
  words: ['as recorded'],
});
