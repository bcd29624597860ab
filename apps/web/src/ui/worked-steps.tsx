import { Table } from './table';

/** One step of a working: the rule in words, the same with the figures put in, and what comes of it. */
export type WorkedStep = { what: string; rule: string; putIn: string; gives: string };

/** A working step by step. */
export function WorkedSteps({ steps, of = 'Step by step' }: { steps: WorkedStep[]; of?: string }) {
  return (
    <Table
      caption={of}
      captionUnseen
      rows={steps}
      rowKey={({ what, putIn }) => `${what} ${putIn}`}
      columns={[
        { head: 'Step', cell: ({ what }) => what },
        { head: 'Rule', cell: ({ rule }) => rule },
        { head: 'With the figures', cell: ({ putIn }) => putIn },
        { head: 'Gives', cell: ({ gives }) => <strong>{gives}</strong> },
      ]}
    />
  );
}
