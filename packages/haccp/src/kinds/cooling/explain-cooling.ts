import type { ChillingBegan, CurveContext } from '../../limits/curve-context';
import type { CoolingLimit } from './cooling-limit';
import { sayFromTo } from '../../quantity/say-from-to';
import type { Told } from '../../limits/told';
import { sayPrinted } from '../../quantity/bound';
import { sayDuration } from '../../quantity/duration';
import type { TemperatureUnit } from '../../quantity/temperature';
import type { CurveReading } from '../../thermal/curve';
import type { Passing } from './passing';
import type { StageSpan } from './stage-span';
import type { WorkedStep as Step } from '../../explain/explanation';
import { coolingOf, type Cooled } from './cooling-of';
import type { RestingOn, SayTime, WorkedOut } from '../../explain/explanation';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import { readingAtInstant, resting } from '../../explain/readings-at';
import { betweenSteps } from './say-passing';

/** Every stage as bracket and interpolated, its time left while it runs, and what would still rescue it. */
export function explainCooling(
  limit: CoolingLimit,
  told: Told,
  own: readonly CurveReading[],
  context: CurveContext,
  say: SayTime,
): WorkedOut {
  const cooled = coolingOf(own, limit, context);
  const last = cooled?.warmer.at(-1);
  if (!cooled || !last) return explainByVerdict(told);
  const { unit } = last.temperature;
  const gap = sayDuration(limit.longestGapSeconds * 1000);
  return {
    steps: [
      ...chillStartStep(limit, context, say),
      ...once(cooled.spans.flatMap((span) => stageSteps(span, cooled, context, unit, say))),
      againstLimit(told),
    ],
    restsOn: cooled.spans.flatMap((span) => restsOn(span, cooled, unit)),
    assumptions: [
      'A stage counts from the last reading at or above its upper figure to the first that stays down at its lower.',
      `A step of more than ${gap} without a reading leaves a stage undetermined.`,
    ],
  };
}

/** The end of one stage is the start of the next: it is worked out once. */
const once = (steps: readonly Step[]): Step[] => [...new Map(steps.map((step) => [`${step.what} ${step.putIn}`, step])).values()];

const againstLimit = ({ limit, measured, margin, because }: Told): Step => ({
  what: 'Against the limit',
  rule: limit,
  putIn: measured,
  gives: [margin, because].filter(Boolean).join('. '),
});

function chillStartStep({ startWithinSeconds }: CoolingLimit, { startAt, chillingBegan }: CurveContext, say: SayTime): Step[] {
  if (startWithinSeconds === undefined) return [];
  return [
    {
      what: 'Chilling begun',
      rule: `start of chilling − end of cooking, at most ${sayDuration(startWithinSeconds * 1000)}`,
      ...chillStartFrom(startAt, chillingBegan, say),
    },
  ];
}

function chillStartFrom(
  startAt: number | undefined,
  { answers = [] }: Partial<ChillingBegan> = {},
  say: SayTime,
): Pick<Step, 'putIn' | 'gives'> {
  if (startAt === undefined) return { putIn: 'the end of cooking is not recorded', gives: 'not known' };
  const latest = Math.max(...answers.map(({ at }) => at));
  if (answers.length === 0) {
    const gives = 'shown only by a core below the first figure in that time';
    return { putIn: `end of cooking ${say(startAt)}; no start of chilling is recorded`, gives };
  }
  const took = sayDuration(latest - startAt) + (latest < startAt ? ' before cooking ended' : '');
  const counted = answers.length === 1 ? '' : `, by the latest of ${answers.length} answers`;
  return { putIn: `${say(latest)} − ${say(startAt)}`, gives: `${took}${counted}` };
}

function stageSteps(span: StageSpan, cooled: Cooled, { now, chiller }: CurveContext, unit: TemperatureUnit, say: SayTime): Step[] {
  const { startAt, endAt, deadline, from, to, finding, passings } = span;
  const what = sayFromTo(from, to, unit);
  if (startAt === undefined || deadline === undefined || !passings) {
    if (!from) return [{ what, rule: 'begins when cooking ends', putIn: finding, gives: 'not timed' }];
    return [{ what, rule: `begins below ${sayPrinted(from, unit)}`, putIn: 'no reading below it', gives: finding }];
  }
  const allowed = sayDuration(deadline - startAt);
  if (endAt === undefined) {
    const from = now ?? (cooled.warmer.at(-1) as CurveReading).at;
    const left = deadline - from;
    const running: Step = {
      what: `${what}: time left`,
      rule: `start + ${allowed} − ${now === undefined ? 'the last reading' : 'now'}`,
      putIn: `${say(startAt)} + ${allowed} − ${say(from)}`,
      gives: left >= 0 ? `${sayDuration(left)} left` : `over by ${sayDuration(left)}`,
    };
    return [running, ...betweenSteps(span, passings, { ...cooled, chiller }, unit, say)];
  }
  const took: Step = {
    what,
    rule: 'end − start, in the worst case the readings allow',
    putIn: `${say(endAt)} − ${say(startAt)}`,
    gives: `${sayDuration(endAt - startAt)} of ${allowed}: ${finding}`,
  };
  return [took, ...betweenSteps(span, passings, { ...cooled, chiller }, unit, say)];
}

function restsOn({ from, to, passings }: StageSpan, { colder, warmer }: Cooled, unit: TemperatureUnit): RestingOn[] {
  if (!passings) return [];
  const lower = sayPrinted(to, unit);
  const { start, end } = passings;
  return [
    ...(start && from ? restsOnStart(start, sayPrinted(from, unit), colder) : []),
    ...(end && end.after !== end.by ? resting(readingAtInstant(warmer, end.after), `the last above ${lower}`) : []),
    ...(end ? resting(readingAtInstant(warmer, end.by), `the first that stays at or below ${lower}`) : []),
  ];
}

const restsOnStart = ({ after, by }: Passing, upper: string, colder: readonly CurveReading[]): RestingOn[] => [
  ...(by === after ? [] : resting(readingAtInstant(colder, after), `the last at or above ${upper}`)),
  ...resting(readingAtInstant(colder, by), `the first below ${upper}`),
];
