import { sayFigureLimit, type FigureLimit } from './figure-limit';
import type { InstrumentErrors } from '../../instruments/instrument-errors';
import { judgeFigureRead } from './judge-figure-read';
import type { Tell } from '../../limits/told';
import { worstVerdict } from '../../limits/worst-verdict';
import type { WorkedOut } from '../../explain/explanation';

/** One figure as it was read or analysed. `at` in epoch ms. */
export type FigureRead = {
  id?: string;
  at?: number;
  probe?: string;
  read: { value: number; unit: string } | undefined;
};

/** Every figure against the bounds; a later good one undoes no earlier miss. */
export function explainFigure(limit: FigureLimit, figures: readonly FigureRead[], tell: Tell, errors?: InstrumentErrors): WorkedOut {
  const judged = figures.map((one) => ({ ...one, verdict: judgeFigureRead(one.read, limit, errors) }));
  if (judged.length === 0) return { steps: [], restsOn: [], assumptions: [] };
  const worst = worstVerdict(judged.map(({ verdict }) => verdict));
  const told = tell(worst, limit);
  return {
    steps: [
      {
        what: limit.of,
        rule: sayFigureLimit(limit),
        putIn: told.measured,
        gives: [told.margin, told.because].filter(Boolean).join('. '),
      },
    ],
    restsOn: judged.map(({ id, at, probe, verdict }) => ({
      id,
      at,
      probe: probe || undefined,
      said: tell(verdict, limit).measured,
      role: verdict === worst ? 'governs' : verdict.kind,
    })),
    assumptions: [...(judged.length > 1 ? ['Each figure is judged by itself.'] : []), ...told.notes],
  };
}
