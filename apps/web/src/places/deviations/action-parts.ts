import { partsOfAction, type CorrectiveActionForm, type Deviation, type PartCode, type PartOfAction } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

/** `code` names the words; the paragraph is of 9 CFR. */
type Asked = Omit<PartOfAction, 'code'> & { code: PartCode | 'reassessed-by' | 'different' };

export type ActionPart = { key: string; question: string; hint: string; label: string; paragraph?: string };

const askedFor: Record<CorrectiveActionForm, readonly Asked[]> = {
  ...partsOfAction,
  unforeseen: [...partsOfAction.unforeseen, { key: 'reassessedBy', code: 'reassessed-by', paragraph: '417.3(b)(4)' }],
};

/** Asked only when the control point deviated before. */
const different: Asked = { key: 'different', code: 'different' };

export function actionParts({ form, recurrence }: Pick<Deviation, 'form' | 'recurrence'>, say: SayOf<'settling'>): readonly ActionPart[] {
  const asked = askedFor[form];
  if (recurrence.length === 0 || form === 'unforeseen') return asked.map((part) => inWords(part, say));
  const last = form === 'critical' ? { ...different, paragraph: '417.3(a)(3)' } : different;
  return [...asked, last].map((part) => inWords(part, say));
}

export const writtenParts = (form: CorrectiveActionForm, say: SayOf<'settling'>): readonly ActionPart[] =>
  [...askedFor[form], different].map((part) => inWords(part, say));

const inWords = ({ key, code, paragraph }: Asked, say: SayOf<'settling'>): ActionPart => ({
  key,
  paragraph,
  question: say(`${code}-question`),
  hint: say(`${code}-hint`),
  label: say(`${code}-label`),
});
