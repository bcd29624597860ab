import { once } from '../../limits/once';
import type { ChillingBegan, CurveContext } from '../../limits/curve-context';
import type { CoolingLimit } from './cooling-limit';
import { coded, wordFor } from '../../limits/coded';
import { sum } from '../../limits/line-part';
import type { Figure } from '../../limits/verdict';
import { printedAllowing } from '../../quantity/printed-allowing';
import { timeOf } from '../../quantity/quantities';
import type { Quantity } from '../../quantity/quantity';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { Passing } from './passing';
import type { StageSpan } from './stage-span';
import { stageOf } from './stage-of';
import { coolingOf, type Cooled } from './cooling-of';
import type { ExplainedStep, RestingOn, WorkedOut } from '../../explain/explanation';
import { againstLimit, explainByVerdict } from '../../explain/explain-by-verdict';
import { readingAtInstant, resting } from '../../explain/readings-at';
import { betweenSteps } from './explain-passing';

/** Worst case and interpolated, time left, and what would still rescue the stage. */
export function explainCooling(limit: CoolingLimit, own: readonly CurveReading[], context: CurveContext): WorkedOut {
  const cooled = coolingOf(own, limit, context);
  const last = cooled?.warmer.at(-1);
  if (!cooled || !last) return explainByVerdict;
  const { unit } = last.temperature;
  return {
    steps: [
      ...chillStartStep(limit, context),
      // the end of one stage is the start of the next
      ...once(
        cooled.spans.flatMap((span) => stageSteps(span, cooled, context, unit)),
        ({ what, putIn }) => [what, putIn],
      ),
      againstLimit,
    ],
    restsOn: cooled.spans.flatMap((span) => restsOn(span, cooled, unit)),
    assumptions: [coded('stage-counts-from'), coded('gap-leaves-stage', { gap: timeOf(limit.longestGapSeconds * 1000) })],
  };
}

function chillStartStep({ startWithinSeconds }: CoolingLimit, { startAt, chillingBegan }: CurveContext): ExplainedStep[] {
  if (startWithinSeconds === undefined) return [];
  return [
    {
      what: coded('chilling-begun'),
      rule: coded('chilling-begun.rule', { most: timeOf(startWithinSeconds * 1000) }),
      ...chillStartFrom(startAt, chillingBegan),
    },
  ];
}

function chillStartFrom(
  startAt: number | undefined,
  { answers = [] }: Partial<ChillingBegan> = {},
): Pick<ExplainedStep, 'putIn' | 'gives'> {
  if (startAt === undefined) return { putIn: coded('end-of-cooking-not-recorded'), gives: coded('not-known') };
  const latest = Math.max(...answers.map(({ at }) => at));
  if (answers.length === 0) return { putIn: coded('no-chilling-recorded', { at: { at: startAt } }), gives: coded('shown-by-a-cold-core') };
  const when = latest < startAt ? 'before-cooking-ended' : 'after-cooking';
  const figures = { time: timeOf(latest - startAt), ...(answers.length > 1 && { count: answers.length }) };
  return { putIn: sum`${{ at: latest }} − ${{ at: startAt }}`, gives: coded(`chilling-${when}`, figures) };
}

function stageSteps(span: StageSpan, cooled: Cooled, { now, chiller }: CurveContext, unit: TemperatureUnit): ExplainedStep[] {
  const { startAt, endAt, deadline, from, to, finding, passings } = span;
  const stage = stageOf(from, to, unit);
  const found = wordFor('stage-is', finding);
  if (startAt === undefined || deadline === undefined || !passings) {
    if (!from) return [{ what: stage, rule: coded('begins-when-cooking-ends'), putIn: found, gives: coded('not-timed') }];
    const figure = printedAllowing(from, unit, cooled.cooling.error);
    return [{ what: stage, rule: coded('begins-below', { figure }), putIn: coded('no-reading-below', { figure }), gives: found }];
  }
  const allowed = timeOf(deadline - startAt);
  const between = betweenSteps(span, passings, { ...cooled, error: cooled.cooling.error, chiller }, unit);
  if (endAt === undefined) return [timeLeft(stage, startAt, deadline, now ?? lastOf(cooled), now === undefined), ...between];
  const took: ExplainedStep = {
    what: stage,
    rule: coded('end-less-start'),
    putIn: sum`${{ at: endAt }} − ${{ at: startAt }}`,
    gives: coded('took-of', { took: timeOf(endAt - startAt), allowed, found }),
  };
  return [took, ...between];
}

const lastOf = ({ warmer }: Cooled): number => (warmer.at(-1) as CurveReading).at;

function timeLeft(stage: Figure, startAt: number, deadline: number, from: number, isByReading: boolean): ExplainedStep {
  const left = deadline - from;
  const allowed = timeOf(deadline - startAt);
  return {
    what: coded('stage-time-left', { stage }),
    rule: coded(isByReading ? 'start-and-allowed-less-last' : 'start-and-allowed-less-now', { allowed }),
    putIn: sum`${{ at: startAt }} + ${allowed} − ${{ at: from }}`,
    gives: coded(left >= 0 ? 'time-left' : 'over-by', { time: timeOf(left) }),
  };
}

function restsOn({ from, to, passings }: StageSpan, { colder, warmer, cooling: { error } }: Cooled, unit: TemperatureUnit): RestingOn[] {
  if (!passings) return [];
  const figure = printedAllowing(to, unit, -error);
  const { start, end } = passings;
  return [
    ...(start && from ? restsOnStart(start, printedAllowing(from, unit, error), colder) : []),
    ...(end && end.after !== end.by ? resting(readingAtInstant(warmer, end.after), 'last-above', { figure }) : []),
    ...(end ? resting(readingAtInstant(warmer, end.by), 'first-that-stays', { figure }) : []),
  ];
}

const restsOnStart = ({ after, by }: Passing, figure: Quantity, colder: readonly CurveReading[]): RestingOn[] => [
  ...(by === after ? [] : resting(readingAtInstant(colder, after), 'last-at-or-above', { figure })),
  ...resting(readingAtInstant(colder, by), 'first-below', { figure }),
];
