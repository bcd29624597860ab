import { notedError } from '../../instruments/noted-error';
import { errorOf, usableContext, type CurveContext } from '../../limits/curve-context';
import type { Series } from '../../limits/series';
import type { Verdict } from '../../limits/verdict';
import { worstByName } from '../../limits/worst-by-name';
import { byProbe } from '../../thermal/curve';
import type { SeriesJudge } from '../judge';
import type { DegreeHoursLimit } from './fermentation-limit';
import { judgeFermentation } from './judge-fermentation';
import { lessAcid } from './less-acid';

export const degreeHoursJudge: SeriesJudge<DegreeHoursLimit> = {
  readFrom: ({ temperatures, acid }) => [temperatures, acid],
  judge: (series, limit, context) => judgeChambers({ ...series, acid: lessAcid(series.acid, context.acidError) }, limit, context),
};

/** The worst probe governs. Without a recorded start nothing is met. */
function judgeChambers({ temperatures, acid }: Series, limit: DegreeHoursLimit, context: CurveContext): Verdict {
  const { startAt, ended, acidError } = usableContext(context);
  const allowed = acidError ? [notedError(acidError, 'pH')] : [];
  return worstByName(
    [...byProbe(temperatures)].map(([probe, chamber]) => {
      const verdict = judgeFermentation({ chamber, error: errorOf(context), acid, startAt, ended }, limit);
      return [probe, { ...verdict, notes: [...verdict.notes, ...allowed] }];
    }),
  );
}
