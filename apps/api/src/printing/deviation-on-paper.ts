import type { Deviation } from '@larderbook/contracts';
import type { DeviationData, StatementData } from '@larderbook/documents';
import type { Verdict } from '@larderbook/haccp';
import { sayEntered } from './say-weight';

export type NumberOf = (deviationId: string | undefined) => string | undefined;

/** "No. 4": the same on the record, in the margin and on its own sheet. */
export const sayNumber = ({ number }: Pick<Deviation, 'number'>): string => `No. ${number}`;

export const numbersOf = (deviations: readonly Deviation[]): NumberOf => {
  const numbers = new Map(deviations.map((deviation) => [deviation.deviationId, sayNumber(deviation)]));
  return (deviationId) => (deviationId ? numbers.get(deviationId) : undefined);
};

export function deviationOnPaper(deviation: Deviation): DeviationData {
  const { actions, disposition, closing, opened } = deviation;
  const said = (part: 'cause' | 'control' | 'prevention' | 'product'): StatementData[] =>
    actions.map(({ made, ...action }) => ({ text: action[part], by: made.name, at: Date.parse(made.at) }));
  return {
    number: sayNumber(deviation),
    controlPoint: whereOf(deviation),
    opened: { by: opened.name, at: Date.parse(opened.at) },
    verdict: deviation.verdict ?? unforeseen(deviation),
    cause: said('cause'),
    underControl: said('control'),
    prevention: said('prevention'),
    product: said('product'),
    dispositions: disposition
      ? [
          {
            decision: disposition.decision,
            quantity: sayEntered(disposition.weight),
            why: disposition.basis,
            by: disposition.by,
            at: Date.parse(disposition.at),
          },
        ]
      : [],
    closed: closing && { statement: closing.note || undefined, by: closing.by, at: Date.parse(closing.at) },
  };
}

function whereOf({ controlPoint, receipt, lot }: Deviation): string {
  if (controlPoint) return controlPoint.name;
  return receipt ? `Delivery ${receipt.code}, ${receipt.itemName}` : `Lot ${lot?.code ?? ''}`;
}

/** Opened by hand: there is no figure, only what a person saw. */
const unforeseen = ({ description, controlPoint }: Deviation): Verdict => ({
  kind: 'undetermined',
  measured: 'Opened by hand',
  limit: controlPoint?.hazard ?? 'what the plan foresees',
  because: description,
  notes: [],
  source: { citation: '9 CFR 417.3', edition: '', confirmed: true },
});
