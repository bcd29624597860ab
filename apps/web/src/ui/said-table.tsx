import type { ReactNode } from 'react';
import { Moment } from './moment';
import { Table } from './table';
import { useSay } from './voice';

type Said = { clarificationId: string; word: string; reason: string; made: { name: string; recordedAt: string } };

type SaidTableProps<S extends Said> = {
  said: S[];
  /** The readings it was said of. */
  sayReadings: (one: S) => string;
  zone: string;
  change?: (one: S) => ReactNode;
};

export function SaidTable<S extends Said>({ said, sayReadings, zone, change }: SaidTableProps<S>) {
  const say = useSay('recording');
  const sayShared = useSay('shared');
  return (
    <Table
      caption={say('said-of-readings')}
      captionUnseen
      rows={said}
      rowKey={({ clarificationId }) => clarificationId}
      columns={[
        { head: say('readings'), cell: sayReadings },
        { head: say('said-to-be'), cell: ({ word }) => <strong>{word}</strong> },
        { head: say('why'), cell: ({ reason }) => reason },
        {
          head: say('who-when'),
          cell: ({ made }) => (
            <>
              {made.name}, <Moment at={made.recordedAt} zone={zone} />
            </>
          ),
        },
        ...(change ? [{ head: sayShared('change'), cell: change }] : []),
      ]}
    />
  );
}
