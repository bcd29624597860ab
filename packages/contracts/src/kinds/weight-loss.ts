import { z } from 'zod';
import { percent } from '../fields';
import { source } from '../source';

export const weightLoss = z.object({ kind: z.literal('weightLoss'), percent: percent(99), source });
