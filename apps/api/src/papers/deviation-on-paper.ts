import { partsOfAction, type CorrectiveActionForm, type Deviation, type Disposition, type Voiding } from '@larderbook/contracts';
import type { ActionPartData, DeviationData, DispositionData, StatementData, StruckData } from '@larderbook/documents';
import type { Verdict } from '@larderbook/haccp';
import type { SayTime } from './say-time';
import { sayEntered } from './say-weight';

export type NumberOf = (deviationId: string | undefined) => string | undefined;

/** "No. 4": the same on the record, in the margin and on its own sheet. */
export const sayNumber = ({ number }: { number: number }): string => `No. ${number}`;

export const numbersOf = (deviations: readonly Deviation[]): NumberOf => {
  const numbers = new Map(deviations.map((deviation) => [deviation.deviationId, sayNumber(deviation)]));
  return (deviationId) => (deviationId ? numbers.get(deviationId) : undefined);
};

const kindWords: Record<CorrectiveActionForm, { kind: string; answeredUnder?: string }> = {
  critical: { kind: 'Critical limit missed', answeredUnder: '9 CFR 417.3(a)' },
  prerequisite: { kind: 'Limit missed' },
  unforeseen: { kind: 'Unforeseen', answeredUnder: '9 CFR 417.3(b)' },
};
/** The part that says what was done, where a deviation is only named. */
const answering: Record<CorrectiveActionForm, string> = { critical: 'control', prerequisite: 'done', unforeseen: 'product' };

export function deviationOnPaper(deviation: Deviation, time: SayTime): DeviationData {
  const { form, closing, opened, covered, open, undecided, atStake } = deviation;
  return {
    number: sayNumber(deviation),
    controlPoint: whereOf(deviation),
    ...kindWords[form],
    ...(form === 'unforeseen' && deviation.verdict?.kind === 'missed' && { kind: 'Limit missed' }),
    opened: { by: opened.name, at: Date.parse(opened.at), enteredAt: Date.parse(opened.recordedAt) },
    verdict: deviation.verdict ?? unforeseen(deviation),
    openedWith: deviation.openedWith?.verdict,
    recurrence: deviation.recurrence.map(
      ({ openedAt, code, description, ...earlier }) =>
        `${sayNumber(earlier)}, ${time.instant(Date.parse(openedAt))}, ${code}: ${description}`,
    ),
    parts: partsSaid(deviation),
    done: said(deviation, answering[form])
      .filter(({ struck }) => !struck)
      .at(-1)?.text,
    dispositions: deviation.dispositions.map((disposition) => dispositionOnPaper(disposition, deviation)),
    undecided: covered ? undefined : `${sayEntered(undecided)} of ${sayEntered(atStake)}`,
    closed: closing && !open ? { statement: closing.note || undefined, by: closing.by, at: Date.parse(closing.at) } : undefined,
    notClosed: deviation.closingsTakenBack.map(({ note, by, at, takenBack }) => ({
      statement: note || undefined,
      by,
      at: Date.parse(at),
      struck: struckOnPaper(takenBack),
    })),
  };
}

/** What counts no more stands before what took its place. */
const said = ({ actions, voidedActions }: Deviation, key: string): ActionPartData['said'] =>
  [...voidedActions, ...actions.map((one) => ({ ...one, voided: undefined }))].flatMap(({ made, action, voided }) => {
    const text = (action as Record<string, string | undefined>)[key];
    const struck = voided && struckOnPaper(voided);
    return text ? [{ text, by: made.name, at: Date.parse(made.at), enteredAt: Date.parse(made.recordedAt), struck }] : [];
  });

function partsSaid(deviation: Deviation): DeviationData['parts'] {
  const parts = partsOfAction[deviation.form].map(({ key, ...part }) => ({ ...part, said: said(deviation, key) }));
  const trained = said(deviation, 'reassessedBy');
  const different = said(deviation, 'different');
  return [
    ...parts,
    ...(trained.length > 0 ? [{ paragraph: '417.7', asks: 'Reassessed by', said: trained }] : []),
    ...(different.length > 0 ? [{ asks: 'What will be different this time', said: different }] : []),
  ];
}

function dispositionOnPaper(disposition: Disposition, { deviationId }: Deviation): DispositionData {
  const { decision, weight, code, reason, basis, speaksFor, by, at, toDestroy, destruction, voided } = disposition;
  const others = speaksFor.filter((other) => other.deviationId !== deviationId);
  return {
    decision,
    quantity: `${sayEntered(weight)} of ${code}`,
    why: [basis && `On: ${basis}.`, reason].filter(Boolean).join(' '),
    alsoFor: others.length > 0 ? others.map(sayNumber).join(', ') : undefined,
    by,
    at: Date.parse(at),
    toDestroy,
    destroyed: destruction && destroyedOnPaper(destruction),
    notDestroyed: disposition.voidedDestructions.map((record) => ({
      destroyed: destroyedOnPaper(record),
      voided: struckOnPaper(record.voided),
    })),
    voided: voided && struckOnPaper(voided),
  };
}

const destroyedOnPaper = ({ method: text, by, at, recordedAt }: NonNullable<Disposition['destruction']>): StatementData => ({
  text,
  by,
  at: Date.parse(at),
  enteredAt: Date.parse(recordedAt),
});

const struckOnPaper = ({ how, reason: text, by, at }: Voiding): StruckData => ({
  how,
  text,
  by,
  at: Date.parse(at),
});

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
  source: { citation: '9 CFR 417.3(b)', edition: '', confirmed: true },
});
