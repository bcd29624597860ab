import type { CorrectiveActionForm, Deviation } from '@larderbook/contracts';

export type ActionPart = { key: string; question: string; hint: string; label: string; paragraph?: string };

const nothingHarmful = {
  question: 'How is it made sure that no harmful product leaves?',
  hint: 'Where the product is, how it is marked, and who knows.',
  label: 'Product',
};

/** What a corrective action is asked for, one question each; the paragraph is of 9 CFR. */
const partsOf: Record<CorrectiveActionForm, readonly ActionPart[]> = {
  critical: [
    {
      key: 'cause',
      question: 'What was the cause, and how was it removed?',
      hint: 'What you found, and what was done so that it is gone.',
      label: 'Cause',
      paragraph: '417.3(a)(1)',
    },
    {
      key: 'control',
      question: 'How is the control point under control again?',
      hint: 'What was measured afterwards, and what it showed.',
      label: 'Under control again',
      paragraph: '417.3(a)(2)',
    },
    {
      key: 'prevention',
      question: 'What keeps it from happening again?',
      hint: 'What is done differently from now on.',
      label: 'Prevention',
      paragraph: '417.3(a)(3)',
    },
    { key: 'product', ...nothingHarmful, paragraph: '417.3(a)(4)' },
  ],
  unforeseen: [
    {
      key: 'segregation',
      question: 'How is the product set apart and held?',
      hint: 'Where it stands, how it is marked, until it is decided.',
      label: 'Set apart and held',
      paragraph: '417.3(b)(1)',
    },
    {
      key: 'acceptability',
      question: 'Is the product fit to be sold, and how was that found out?',
      hint: 'What was looked at or tested, and who was asked.',
      label: 'Fit to be sold',
      paragraph: '417.3(b)(2)',
    },
    { key: 'product', ...nothingHarmful, paragraph: '417.3(b)(3)' },
    {
      key: 'reassessment',
      question: 'Does this belong in the plan?',
      hint: 'What the reassessment found: added to the plan, or why not.',
      label: 'Reassessment',
      paragraph: '417.3(b)(4)',
    },
    {
      key: 'reassessedBy',
      question: 'Who reassessed it?',
      hint: 'Somebody trained in HACCP, as 9 CFR 417.7 asks.',
      label: 'Trained person',
      paragraph: '417.3(b)(4)',
    },
  ],
  prerequisite: [
    {
      key: 'done',
      question: 'What was done about it?',
      hint: 'What you found, and what is right again.',
      label: 'What was done',
    },
    {
      key: 'product',
      question: 'What about the product?',
      hint: 'Which is concerned and what becomes of it; if none is, say so.',
      label: 'Product',
    },
  ],
};

/** Asked only when the control point deviated before. */
const different: ActionPart = {
  key: 'different',
  question: 'What will be different this time?',
  hint: 'What was done before did not hold.',
  label: 'Different this time',
};

/** The questions of one deviation's corrective action, in order. */
export function actionParts({ form, recurrence }: Pick<Deviation, 'form' | 'recurrence'>): readonly ActionPart[] {
  const parts = partsOf[form];
  if (recurrence.length === 0 || form === 'unforeseen') return parts;
  return [...parts, form === 'critical' ? { ...different, paragraph: '417.3(a)(3)' } : different];
}

/** Every part that may have been written, for showing what was. */
export const writtenParts = (form: CorrectiveActionForm): readonly ActionPart[] => [...partsOf[form], different];
