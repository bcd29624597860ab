import { partsOfAction, type CorrectiveActionForm, type Deviation, type Disposition, type Voiding } from '@larderbook/contracts';
import type { ActionPartData, DeviationData, DispositionData, StatementData, StruckData } from '@larderbook/documents';
import type { Told } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';
import type { Telling } from './telling';
import { formatEntered } from './format-weight';

export type NumberOf = (deviationId: string | undefined) => string | undefined;

/** "No. 4", the same wherever the deviation is printed. */
export const numberOf = ({ number }: { number: number }, say: Telling['say']): string =>
  say('deviation-number', { number: String(number) });

export const numbersOf = (deviations: readonly Deviation[], say: Telling['say']): NumberOf => {
  const numbers = new Map(deviations.map((deviation) => [deviation.deviationId, numberOf(deviation, say)]));
  return (deviationId) => (deviationId ? numbers.get(deviationId) : undefined);
};

const kindOf = { critical: 'critical-limit-missed', prerequisite: 'limit-missed', unforeseen: 'unforeseen' } as const;
const answeredUnder: Partial<Record<CorrectiveActionForm, string>> = { critical: '9 CFR 417.3(a)', unforeseen: '9 CFR 417.3(b)' };
/** Where a deviation is only named, this part says what was done. */
const answering: Record<CorrectiveActionForm, string> = { critical: 'control', prerequisite: 'done', unforeseen: 'product' };

export function deviationOnPaper(deviation: Deviation, telling: Telling): DeviationData {
  const { say, tell } = telling;
  const { form, closing, opened, covered, open, undecided, atStake } = deviation;
  return {
    number: numberOf(deviation, say),
    controlPoint: whereOf(deviation, say),
    kind: say(form === 'unforeseen' && deviation.verdict?.kind === 'missed' ? 'limit-missed' : kindOf[form]),
    answeredUnder: answeredUnder[form],
    opened: { by: opened.name, at: Date.parse(opened.at), enteredAt: Date.parse(opened.recordedAt) },
    verdict: deviation.verdict ? tell(deviation.verdict, deviation.limit) : unforeseen(deviation, telling),
    openedWith: deviation.openedWith && tell(deviation.openedWith.verdict, deviation.limit),
    recurrence: deviation.recurrence.map(({ openedAt, code, description, ...earlier }) =>
      say('earlier-deviation', {
        number: numberOf(earlier, say),
        at: telling.instant(Date.parse(openedAt)),
        code,
        description: telling.account(description),
      }),
    ),
    parts: partsSaid(deviation, say),
    done: said(deviation, answering[form])
      .filter(({ struck }) => !struck)
      .at(-1)?.text,
    dispositions: deviation.dispositions.map((disposition) => dispositionOnPaper(disposition, deviation, telling)),
    undecided: covered ? undefined : say('undecided-of', { undecided: formatEntered(undecided), atStake: formatEntered(atStake) }),
    closed: closing && !open ? { statement: closing.note || undefined, by: closing.by, at: Date.parse(closing.at) } : undefined,
    notClosed: deviation.closingsTakenBack.map(({ note, by, at, takenBack }) => ({
      statement: note || undefined,
      by,
      at: Date.parse(at),
      struck: struckOnPaper(takenBack),
    })),
  };
}

/** Voided actions stand before what took their place. */
const said = ({ actions, voidedActions }: Deviation, key: string): ActionPartData['said'] =>
  [...voidedActions, ...actions.map((one) => ({ ...one, voided: undefined }))].flatMap(({ made, action, voided }) => {
    const text = (action as Record<string, string | undefined>)[key];
    const struck = voided && struckOnPaper(voided);
    return text ? [{ text, by: made.name, at: Date.parse(made.at), enteredAt: Date.parse(made.recordedAt), struck }] : [];
  });

function partsSaid(deviation: Deviation, say: Telling['say']): DeviationData['parts'] {
  const parts = partsOfAction[deviation.form].map(({ key, code, paragraph }) => ({
    paragraph,
    asks: say(`asks-${code}`),
    said: said(deviation, key),
  }));
  const trained = said(deviation, 'reassessedBy');
  const different = said(deviation, 'different');
  return [
    ...parts,
    ...(trained.length > 0 ? [{ paragraph: '417.7', asks: say('reassessed-by'), said: trained }] : []),
    ...(different.length > 0 ? [{ asks: say('different-this-time'), said: different }] : []),
  ];
}

function dispositionOnPaper(disposition: Disposition, { deviationId }: Deviation, { say, of }: Telling): DispositionData {
  const { decision, weight, code, reason, basis, speaksFor, by, at, toDestroy, destruction, voided } = disposition;
  const others = speaksFor.filter((other) => other.deviationId !== deviationId);
  return {
    decision: of('settling')(`${decision}-title`),
    quantity: say('weight-of', { weight: formatEntered(weight), code }),
    why: [basis && say(codeOf('on', basis)), reason].filter(Boolean).join(' '),
    alsoFor: others.length > 0 ? others.map((other) => numberOf(other, say)).join(', ') : undefined,
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

function whereOf({ controlPoint, receipt, lot }: Deviation, say: Telling['say']): string {
  if (controlPoint) return controlPoint.name;
  return receipt ? say('delivery-of', { code: receipt.code, item: receipt.itemName }) : say('lot-of', { code: lot?.code ?? '' });
}

/** Opened by hand: there is no figure, only what a person saw. */
const unforeseen = ({ description, controlPoint }: Deviation, { say, account }: Telling): Told => ({
  kind: 'undetermined',
  measured: say('opened-by-hand'),
  limit: controlPoint?.hazard ?? say('what-the-plan-foresees'),
  because: account(description),
  notes: [],
  source: { citation: '9 CFR 417.3(b)', edition: '', confirmed: true },
});
