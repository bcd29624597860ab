import { errorOf, type CurveContext } from '../../limits/curve-context';
import { rowsOf, type Row } from './dwell-rows';
import type { DwellLimit } from './dwell-limit';
import { sayRow } from './say-row';
import type { Told } from '../../limits/told';
import { raised, sayPrinted } from '../../quantity/bound';
import { onCommonScale } from '../../quantity/convert-degrees';
import { millisecondsOf, sayDuration } from '../../quantity/duration';
import { prepareCurve, type CurveReading } from '../../thermal/curve';
import type { WorkedStep as Step } from '../../explain/explanation';
import type { RestingOn, SayTime, WorkedOut } from '../../explain/explanation';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import { lengthOf, longestStretch, type Stretch } from './longest-stretch';
import { resting } from '../../explain/readings-at';

/** A row with the stretch that counts for it. */
type Held = { row: Row; stretch?: Stretch; held: number };

/** The row that governs, the stretch it was held for, and the readings at its ends. */
export function explainDwell(limit: DwellLimit, told: Told, own: readonly CurveReading[], context: CurveContext, say: SayTime): WorkedOut {
  const { colder } = prepareCurve(own);
  const last = colder.at(-1);
  const rows = rowsOf(limit);
  const error = errorOf(context);
  if (!last || !rows || error === undefined) return explainByVerdict(told);

  const { unit } = last.temperature;
  const longestGap = millisecondsOf(limit.longestGapSeconds);
  const held = (tolerated: number, mustRun = false) => rows.map((row) => heldFor(colder, row, error, tolerated, mustRun));
  const governs = hottestSatisfied(held(longestGap)) ??
    (context.ended ? hottestSatisfied(held(Infinity)) : undefined) ??
    leastLacking(held(longestGap, !context.ended)) ?? { row: rows[0] as Row, held: 0 };
  const gap = sayDuration(longestGap);
  return {
    steps: stepsOf(governs, told, colder, sayRow(governs.row.printed, unit), gap, say),
    restsOn: restsOn(governs, colder, sayPrinted(governs.row.printed.at, unit)),
    assumptions: [
      'Between two readings the colder of the two is taken; only a step with both readings at or above the row counts.',
      `A step longer than ${gap} counts for nothing.`,
    ],
  };
}

function heldFor(colder: readonly CurveReading[], row: Row, error: number, gap: number, mustRun: boolean): Held {
  const stretch = longestStretch(colder, raised(row.bound, error), gap, mustRun);
  return { row, stretch, held: stretch ? lengthOf(colder, stretch) : -1 };
}

const hottestSatisfied = (rows: readonly Held[]): Held | undefined => rows.findLast(({ row, held }) => held >= row.needed);

/** As the judge chooses: the hotter of two rows that lack the same. */
const leastLacking = (rows: readonly Held[]): Held | undefined =>
  rows
    .filter(({ stretch }) => stretch)
    .toReversed()
    .sort((a, b) => lacking(a) - lacking(b))[0];

const lacking = ({ row, held }: Held): number => row.needed - held;

function stepsOf(
  { row, stretch, held }: Held,
  { limit, margin, because }: Told,
  colder: readonly CurveReading[],
  said: string,
  gap: string,
  say: SayTime,
): Step[] {
  const [first, last] = stretch ? [colder[stretch.first], colder[stretch.last]] : [];
  const choice = {
    what: 'The row that governs',
    rule: 'the hottest row that was held; else the row that lacks least',
    putIn: limit,
    gives: said,
  };
  if (!first || !last) return [choice, { what: 'Held', rule: `no reading is at ${said}`, putIn: '', gives: because }];
  return [
    choice,
    {
      what: 'Held without a break',
      rule: `last − first reading of the longest stretch that is all at or above it, no step longer than ${gap}`,
      putIn: `${say(last.at)} − ${say(first.at)}`,
      gives: sayDuration(held),
    },
    {
      what: 'Against the row',
      rule: 'time held − time of the row, not below 0',
      putIn: `${sayDuration(held)} − ${sayDuration(row.needed)}`,
      gives: [margin, because].filter(Boolean).join('. '),
    },
  ];
}

function restsOn({ stretch }: Held, colder: readonly CurveReading[], figure: string): RestingOn[] {
  if (!stretch) {
    const heat = ({ temperature }: CurveReading) => onCommonScale(temperature);
    return resting(
      colder.reduce((most, one) => (heat(one) > heat(most) ? one : most)),
      'the hottest',
    );
  }
  return [
    ...resting(colder[stretch.first - 1], `the one before, not counted for ${figure}`),
    ...resting(colder[stretch.first], `first at or above ${figure}`),
    ...(stretch.last > stretch.first ? resting(colder[stretch.last], `last at or above ${figure}`) : []),
    ...resting(colder[stretch.last + 1], `the one after, not counted for ${figure}`),
  ];
}
