import { z } from 'zod';
import { name, sentence } from './fields';
import { fault } from './fault';

/** Asked for when the same control point deviated in the 90 days before: 9 CFR 417.3(a)(3). */
const different = sentence(fault('what-will-differ')).optional();

/** A critical limit was missed: the four parts of 9 CFR 417.3(a). */
const criticalAction = z.object({
  form: z.literal('critical'),
  cause: sentence(fault('what-was-the-cause')),
  control: sentence(fault('how-under-control')),
  prevention: sentence(fault('what-prevents-it')),
  product: sentence(fault('no-harmful-product')),
  different,
});

/** Something that the plan did not foresee: the four parts of 9 CFR 417.3(b). */
const unforeseenAction = z.object({
  form: z.literal('unforeseen'),
  segregation: sentence(fault('how-set-apart')),
  acceptability: sentence(fault('may-be-distributed')),
  product: sentence(fault('nothing-adulterated')),
  reassessment: sentence(fault('belongs-in-the-plan')),
  reassessedBy: name,
});

/** A limit of a prerequisite programme was missed: what was done, in plain words. */
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

type Part = { key: string; paragraph?: string; asks: string };

/** What each form asks for, in its order, as the regulation numbers it. */
export const partsOfAction: Record<CorrectiveActionForm, readonly Part[]> = {
  critical: [
    { key: 'cause', paragraph: '417.3(a)(1)', asks: 'Cause identified and eliminated' },
    { key: 'control', paragraph: '417.3(a)(2)', asks: 'Control point under control again' },
    { key: 'prevention', paragraph: '417.3(a)(3)', asks: 'Measures to prevent recurrence' },
    { key: 'product', paragraph: '417.3(a)(4)', asks: 'No injurious or adulterated product enters commerce' },
  ],
  unforeseen: [
    { key: 'segregation', paragraph: '417.3(b)(1)', asks: 'Segregated and held' },
    { key: 'acceptability', paragraph: '417.3(b)(2)', asks: 'Acceptability for distribution determined' },
    { key: 'product', paragraph: '417.3(b)(3)', asks: 'No injurious or adulterated product enters commerce' },
    { key: 'reassessment', paragraph: '417.3(b)(4)', asks: 'Reassessed by a trained individual' },
  ],
  prerequisite: [
    { key: 'done', asks: 'What was done' },
    { key: 'product', asks: 'What becomes of product' },
  ],
};
