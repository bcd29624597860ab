import { z } from 'zod';
import { deviation } from './deviations';
import { disposition } from './dispositions';
import { lotHead } from './lots';
import { instrument } from './monitoring';
import { everyone, route } from './route';

export const showToday = route({
  method: 'GET',
  path: '/today',
  summary: 'What is running, on hold, waiting for review, ready to ship, and what needs attention',
  roles: everyone,
  returns: z.object({
    at: z.string(),
    recalls: z.array(deviation),
    openDeviations: z.array(deviation),
    /** Condemned or called back, held apart until destroyed; oldest first. */
    toDestroy: z.array(disposition),
    inWork: z.array(lotHead),
    onHold: z.array(lotHead),
    toReview: z.array(lotHead),
    cleared: z.array(lotHead),
    overdueInstruments: z.array(instrument),
    plansMissing: z.array(z.object({ productId: z.string(), name: z.string(), lacks: z.enum(['formula', 'plan', 'formula-and-plan']) })),
  }),
  problems: [],
});
