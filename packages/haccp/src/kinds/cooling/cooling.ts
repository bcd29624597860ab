import { boundOf, isColder } from '../../quantity/bound';
import { millisecondsOf, formatDuration } from '../../quantity/duration';
import { formatFromTo } from '../../quantity/format-from-to';
import { DEGREES, type TemperatureUnit } from '../../quantity/temperature';
import type { Kind } from '../kind';
import { none } from '../none';
import { slipOfGap } from '../slips';
import type { CoolingLimit } from './cooling-limit';

export const cooling: Kind<CoolingLimit> = {
  takenAs: 'curve',
  isOfCore: true,
  isChill: true,
  unitsRead: () => DEGREES,
  say,
  fault: ({ stages }) =>
    stages.every(({ from, to }) => !from || isColder(to, from)) ? undefined : 'A stage of the cooling does not end colder than it begins.',
  slips: (limit) => [...slipsOfStages(limit), ...slipOfGap(limit)],
  temperatures: ({ stages }) => stages.flatMap(({ from, to }) => (from ? [from, to] : [to])),
  ruled: ({ stages }) => [...stages.slice(0, 1).flatMap(({ from }) => from ?? []), ...stages.map(({ to }) => to)],
  rows: none,
};

function say({ stages, startWithinSeconds }: CoolingLimit, unit: TemperatureUnit): string {
  const said = stages.map(({ from, to, withinSeconds, counted }, index) => {
    const isInAll = counted === 'start' && index > 0;
    const stage = formatFromTo(isInAll ? stages[0]?.from : from, to, unit);
    const within = formatDuration(millisecondsOf(withinSeconds));
    return isInAll ? `and ${stage} within ${within} in all` : `${index > 0 ? 'then ' : ''}${stage} within ${within}`;
  });
  if (startWithinSeconds === undefined) return said.join(', ');
  const begun = `begun within ${formatDuration(millisecondsOf(startWithinSeconds))} of cooking`;
  return `${begun}, then ${said.join(', ')}`;
}

/** A stage that begins hotter than the last ended. */
function slipsOfStages({ stages, startWithinSeconds = 1 }: CoolingLimit): string[] {
  const isTimed = startWithinSeconds > 0 && stages.every(({ withinSeconds }) => withinSeconds > 0);
  const chains = stages.every(({ from }, index) => {
    const before = stages[index - 1];
    return !before || !from || DEGREES.every((unit) => boundOf(from)[unit] <= boundOf(before.to)[unit]);
  });
  return [
    ...(isTimed && stages.length > 0 ? [] : ['A stage of the cooling has no time.']),
    ...(chains ? [] : ['A stage of the cooling begins hotter than the one before ended.']),
  ];
}
