import {
  addReading,
  addUpLethality,
  atMostOneLogGrown,
  beginCurve,
  comeUpWithinSixHours,
  cookedMeat65Log,
  coolingCured,
  degrees,
  judgeCurve,
  judgeCurveByAll,
  judgeSoFar,
  salmonellaByTheMeatTable,
  salmonellaKilled,
  type CurveLimit,
  type CurveReading,
} from '@larderbook/haccp';
import type { Figure, Measured } from '../report/figure';
import { medianTimeOf } from '../report/median-time';

const day = 24 * 60 * 60;
const second = 1000;
const rounds = 15;

/** A core in °F over a day: five hours of coming up, half an hour of standing, then cooling towards the air of the chiller. */
function coreAt(elapsed: number): number {
  const [cooked, cooling] = [5 * 3600, 5.5 * 3600];
  if (elapsed < cooked) return 41 + (119 * elapsed) / cooked;
  if (elapsed < cooling) return 160;
  return 34 + 126 * Math.exp(-(elapsed - cooling) / 4500);
}

/** A logger of one probe, a tenth of a degree a step, one reading each second. */
const temperatures = Float64Array.from({ length: day }, (_, elapsed) => Math.round(coreAt(elapsed) * 10) / 10);
const readings = Array.from(temperatures, (value, elapsed): CurveReading => ({ at: elapsed * second, temperature: degrees(value, '°F') }));

const limits: [string, CurveLimit][] = [
  ['held long enough', cookedMeat65Log],
  ['come up in time', comeUpWithinSixHours],
  ['cooled in time', coolingCured],
  ['enough killed', { ...salmonellaKilled, authority: 'a process authority, for the measure' }],
  ['little enough grown', atMostOneLogGrown],
];
const ended = { ended: true, startAt: 5.5 * 3600 * second, now: day * second };

const all = limits.map(([, limit]) => limit);
const appended = 1000;

/** A day of one-second readings judged from the first to the last, beside the plainest sum over the same numbers. */
export async function aCurve(): Promise<Measured> {
  const beside = { what: 'area under the same curve, typed array', value: await medianTimeOf(rounds, areaUnder) };
  const figureOf = async (what: string, work: () => unknown, note?: string): Promise<Figure> => ({
    what,
    value: await medianTimeOf(rounds, work),
    unit: 'ms',
    beside,
    note,
  });
  const figures: Figure[] = [];
  for (const [what, limit] of limits) {
    const judge = () => judgeCurve(readings, limit, ended);
    figures.push(await figureOf(what, judge, judge().kind));
  }
  figures.push(await figureOf('by all five kinds of limit', () => judgeCurveByAll(readings, all, ended), 'at most 20 ms'));
  figures.push(await figureOf('lethality added up', () => addUpLethality(readings, salmonellaByTheMeatTable)));
  const thousand = await medianTimeOf(rounds, appendToADay());
  figures.push({ what: 'one more reading, judged by all five', value: thousand / appended, unit: 'ms', note: 'at most 0.05 ms' });
  return { title: 'A curve of 24 hours, one reading a second, judged', figures };
}

/** A thousand readings after the day, each added and judged: one is too quick for the clock. */
function appendToADay(): () => void {
  const curve = beginCurve(all, ended);
  for (const reading of readings) addReading(curve, reading);
  let at = day * second;
  return () => {
    for (let count = 0; count < appended; count++) {
      at += second;
      addReading(curve, { at, temperature: degrees(34, '°F') });
      judgeSoFar(curve, { ended: true, now: at });
    }
  };
}

function areaUnder(): number {
  let area = 0;
  for (let index = 1; index < temperatures.length; index++) area += ((temperatures[index - 1] ?? 0) + (temperatures[index] ?? 0)) / 2;
  return area;
}
