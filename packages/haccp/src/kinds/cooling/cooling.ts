import { boundOf, isColder } from '../../quantity/bound';
import type { LimitSlip } from '../../limits/limit-fault-code';
import { DEGREES } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import { slipOfGap } from '../slips';
import type { CoolingLimit } from './cooling-limit';

export const cooling: Kind<CoolingLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: true,
  unitsRead: () => DEGREES,
  fault: ({ stages }) => (stages.every(({ from, to }) => !from || isColder(to, from)) ? undefined : { code: 'stage-not-colder' }),
  slips: (limit) => [...slipsOfStages(limit), ...slipOfGap(limit)],
  temperatures: ({ stages }) => stages.flatMap(({ from, to }) => (from ? [from, to] : [to])),
  ruled: ({ stages }) => [...stages.slice(0, 1).flatMap(({ from }) => from ?? []), ...stages.map(({ to }) => to)],
  rows: none,
};

function slipsOfStages({ stages, startWithinSeconds = 1 }: CoolingLimit): LimitSlip[] {
  const isTimed = startWithinSeconds > 0 && stages.every(({ withinSeconds }) => withinSeconds > 0);
  const chains = stages.every(({ from }, index) => {
    const before = stages[index - 1];
    return !before || !from || DEGREES.every((unit) => boundOf(from)[unit] <= boundOf(before.to)[unit]);
  });
  return [
    ...(isTimed && stages.length > 0 ? [] : [{ code: 'stage-no-time' } as const]),
    ...(chains ? [] : [{ code: 'stage-hotter' } as const]),
  ];
}
