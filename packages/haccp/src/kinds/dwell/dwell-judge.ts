import { boundOf } from '../../quantity/bound';
import type { PrintedTemperature } from '../../quantity/temperature';
import type { CurveJudge } from '../judge';
import type { DwellLimit } from './dwell-limit';
import { addToDwell, beginDwell, copyOfDwell, judgeDwellSoFar, type DwellSoFar } from './judge-dwell';

export const dwellJudge: CurveJudge<DwellLimit, DwellSoFar> = {
  begin: (limit, { error }) => beginDwell(limit, error),
  add: addToDwell,
  judge: judgeDwellSoFar,
  copy: copyOfDwell,
  awaited(limit, own) {
    const { kind, running } = own.judged();
    return kind === 'undetermined' && running ? { target: coldestRow(limit), way: 'heating' } : undefined;
  },
};

function coldestRow({ rows }: DwellLimit): PrintedTemperature {
  const [coldest] = rows.map(({ at }) => at).sort((a, b) => boundOf(a)['°C'] - boundOf(b)['°C']);
  return coldest as PrintedTemperature;
}
