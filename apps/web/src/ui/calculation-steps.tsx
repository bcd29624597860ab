import { Table } from './table';
import { useSay } from './voice';

/** One step of a calculation: the rule in words, the same with the figures put in, and what comes of it. */
export type CalculationStep = { what: string; rule: string; putIn: string; gives: string };

/** A calculation step by step. */
export function CalculationSteps({ steps, of }: { steps: CalculationStep[]; of?: string }) {
  const say = useSay('explaining');
  return (
    <Table
      caption={of ?? say('step-by-step')}
      captionUnseen
      rows={steps}
      rowKey={({ what, putIn }) => `${what} ${putIn}`}
      columns={[
        { head: say('step'), cell: ({ what }) => what },
        { head: say('rule'), cell: ({ rule }) => rule },
        { head: say('with-figures'), cell: ({ putIn }) => putIn },
        { head: say('gives'), cell: ({ gives }) => <strong>{gives}</strong> },
      ]}
    />
  );
}
