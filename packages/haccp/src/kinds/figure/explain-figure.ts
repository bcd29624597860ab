import type { FigureLimit } from './figure-limit';
import type { InstrumentErrors } from '../../instruments/instrument-errors';
import { judgeFigureRead } from './judge-figure-read';
import { coded } from '../../limits/coded';
import { worstVerdict } from '../../limits/worst-verdict';
import { againstLimit } from '../../explain/explain-by-verdict';
import type { WorkedOut } from '../../explain/explanation';

/** `at` in epoch ms. */
export type FigureRead = {
  id?: string;
  at?: number;
  probe?: string;
  read: { value: number; unit: string } | undefined;
};

/** A later good figure undoes no earlier miss. */
export function explainFigure(limit: FigureLimit, figures: readonly FigureRead[], errors?: InstrumentErrors): WorkedOut {
  const judged = figures.map((one) => ({ ...one, of: judgeFigureRead(one.read, limit, errors) }));
  if (judged.length === 0) return { steps: [], restsOn: [], assumptions: [] };
  const worst = worstVerdict(judged.map(({ of }) => of));
  return {
    steps: [{ ...againstLimit, of: worst }],
    restsOn: judged.map(({ id, at, probe, of }) => ({
      id,
      at,
      probe: probe || undefined,
      is: { verdict: 'measured' },
      role: coded(of === worst ? 'governs' : `judged-${of.kind}`),
      of,
    })),
    assumptions: [...(judged.length > 1 ? [coded('each-figure-by-itself')] : []), ...worst.notes],
  };
}
