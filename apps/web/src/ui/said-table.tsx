import type { ReactNode } from 'react';
import { Moment } from './moment';
import { Table } from './table';

type Said = { clarificationId: string; word: string; reason: string; made: { name: string; recordedAt: string } };

type SaidTableProps<S extends Said> = {
  said: S[];
  /** The readings it was said of. */
  sayReadings: (one: S) => string;
  zone: string;
  /** How what still counts can be taken back. */
  change?: (one: S) => ReactNode;
};

/** What people said of readings: of which, what, why, who and when. */
export function SaidTable<S extends Said>({ said, sayReadings, zone, change }: SaidTableProps<S>) {
  return (
    <Table
      caption="What was said of the readings"
      captionUnseen
      rows={said}
      rowKey={({ clarificationId }) => clarificationId}
      columns={[
        { head: 'Readings', cell: sayReadings },
        { head: 'Said to be', cell: ({ word }) => <strong>{word}</strong> },
        { head: 'Why', cell: ({ reason }) => reason },
        {
          head: 'Who, when',
          cell: ({ made }) => (
            <>
              {made.name}, <Moment at={made.recordedAt} zone={zone} />
            </>
          ),
        },
        ...(change ? [{ head: 'Change', cell: change }] : []),
      ]}
    />
  );
}
