import type { LinePart } from '@larderbook/haccp';
import { Table } from './table';
import { useSay } from './voice';

type Step = Record<'what' | 'rule' | 'putIn' | 'gives', LinePart>;
type CalculationStepsProps<S extends Step> = { steps: readonly S[]; says: (part: LinePart, step: S) => string; of?: string };

export function CalculationSteps<S extends Step>({ steps, says, of }: CalculationStepsProps<S>) {
  const say = useSay('explaining');
  return (
    <Table
      caption={of ?? say('step-by-step')}
      captionUnseen
      rows={steps.map((step) => ({
        what: says(step.what, step),
        rule: says(step.rule, step),
        putIn: says(step.putIn, step),
        gives: says(step.gives, step),
      }))}
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
