import { z } from 'zod';
import { gap, log10, printed } from '../limit-fields';
import { source } from '../source';
import { fault } from '../fault';

const lethalitySet = z.object({
  name: z.string().min(1).max(120),
  organism: z.enum([
    'Salmonella',
    'Listeria monocytogenes',
    'Escherichia coli',
    'Escherichia coli O157',
    'Clostridium perfringens, vegetative',
  ]),
  minutesPerLog: z.number().gt(0).max(10_000),
  referenceCelsius: z.number().min(30).max(130),
  zCelsius: z.number().gt(0).max(30),
  source,
  use: z.enum(['reference', 'comparison', 'mean']),
  note: z.string().max(400),
});

export const lethality = z.object({
  kind: z.literal('lethality'),
  set: lethalitySet,
  log10,
  floor: printed,
  authority: z.string().trim().min(3, fault('name-the-authority')).max(400),
  longestGapSeconds: gap,
  source,
});
