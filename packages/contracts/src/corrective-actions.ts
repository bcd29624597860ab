import { z } from 'zod';
import { name, sentence } from './fields';
import { fault } from './fault';

/** Asked for when the same control point deviated in the 90 days before: 9 CFR 417.3(a)(3). */
const different = sentence(fault('what-will-differ')).optional();

/** The four parts of 9 CFR 417.3(a), after a missed critical limit. */
const criticalAction = z.object({
  form: z.literal('critical'),
  cause: sentence(fault('what-was-the-cause')),
  control: sentence(fault('how-under-control')),
  prevention: sentence(fault('what-prevents-it')),
  product: sentence(fault('no-harmful-product')),
  different,
});

/** The four parts of 9 CFR 417.3(b), after something that the plan did not foresee. */
const unforeseenAction = z.object({
  form: z.literal('unforeseen'),
  segregation: sentence(fault('how-set-apart')),
  acceptability: sentence(fault('may-be-distributed')),
  product: sentence(fault('nothing-adulterated')),
  reassessment: sentence(fault('belongs-in-the-plan')),
  reassessedBy: name,
});

const prerequisiteAction = z.object({
  form: z.literal('prerequisite'),
  done: sentence(fault('what-was-done')),
  product: sentence(fault('what-about-product')),
  different,
});

export const correctiveAction = z.discriminatedUnion('form', [criticalAction, unforeseenAction, prerequisiteAction]);
export type CorrectiveAction = z.output<typeof correctiveAction>;
export const correctiveActionForms = ['critical', 'unforeseen', 'prerequisite'] as const;
export type CorrectiveActionForm = (typeof correctiveActionForms)[number];

export type PartOfAction = { key: string; code: PartCode; paragraph?: string };
export type PartCode =
  | 'cause'
  | 'control'
  | 'prevention'
  | 'nothing-harmful'
  | 'segregation'
  | 'acceptability'
  | 'reassessment'
  | 'done'
  | 'product';

/** The regulation's order and numbers. */
export const partsOfAction: Record<CorrectiveActionForm, readonly PartOfAction[]> = {
  critical: [
    { key: 'cause', code: 'cause', paragraph: '417.3(a)(1)' },
    { key: 'control', code: 'control', paragraph: '417.3(a)(2)' },
    { key: 'prevention', code: 'prevention', paragraph: '417.3(a)(3)' },
    { key: 'product', code: 'nothing-harmful', paragraph: '417.3(a)(4)' },
  ],
  unforeseen: [
    { key: 'segregation', code: 'segregation', paragraph: '417.3(b)(1)' },
    { key: 'acceptability', code: 'acceptability', paragraph: '417.3(b)(2)' },
    { key: 'product', code: 'nothing-harmful', paragraph: '417.3(b)(3)' },
    { key: 'reassessment', code: 'reassessment', paragraph: '417.3(b)(4)' },
  ],
  prerequisite: [
    { key: 'done', code: 'done' },
    { key: 'product', code: 'product' },
  ],
};
