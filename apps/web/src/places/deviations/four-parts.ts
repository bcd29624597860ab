/** The four parts of a corrective action, as 9 CFR 417.3(a)(1) to (4) asks for them: one question each. */
export const fourParts = [
  {
    key: 'cause',
    question: 'What was the cause, and how was it removed?',
    hint: 'What you found, and what was done so that it is gone.',
    label: 'Cause',
  },
  {
    key: 'control',
    question: 'How is the control point under control again?',
    hint: 'What was measured afterwards, and what it showed.',
    label: 'Under control again',
  },
  {
    key: 'prevention',
    question: 'What keeps it from happening again?',
    hint: 'What is done differently from now on.',
    label: 'Prevention',
  },
  {
    key: 'product',
    question: 'How is it made sure that no harmful product leaves?',
    hint: 'Where the product is, how it is marked, and who knows.',
    label: 'Product',
  },
] as const;

export type FourParts = Record<(typeof fourParts)[number]['key'], string>;
export const nothingWritten: FourParts = { cause: '', control: '', prevention: '', product: '' };
