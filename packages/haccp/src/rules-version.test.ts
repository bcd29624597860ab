import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { judgeCheck } from './instruments/judge-check';
import { judgeConcentration } from './kinds/concentration/judge-concentration';
import { judgeAlone } from './limits/judge-alone';
import { judgeSeries } from './limits/judge-series';
import type { CriticalLimit, SeriesLimit } from './limits/limit';
import { seriesOf, type ReadValue } from './limits/series-of';
import { underConditions } from './limits/under-conditions';
import { comeUpWithinSixHours } from './limit-sets/fsis-come-up';
import { nitriteComminuted } from './limit-sets/curing';
import { coldHolding } from './limit-sets/food-code';
import { cookedMeat65Log } from './limit-sets/fsis-meat';
import { atMostOneLogGrown, salmonellaKilled } from './limit-sets/fsis-processes';
import { coolingUncured } from './limit-sets/fsis-stabilization';
import { degreeHoursFahrenheit } from './kinds/degree-hours/fermentation-limit';
import { canonicalJson } from './ledger/canonical-json';
import { massOf } from './quantity/weigh';
import { RULES_VERSION } from './rules-version';

const MINUTE = 60_000;
const { source } = coldHolding;
const reads = (unit: string, ...points: [minutes: number, value: number][]): ReadValue[] =>
  points.map(([minutes, value]) => ({ at: minutes * MINUTE, value, unit }));

const ofSeries: [SeriesLimit, ReadValue[]][] = [
  [cookedMeat65Log, reads('°F', [0, 120], [10, 146], [13, 147], [16, 146])],
  [cookedMeat65Log, reads('°F', [0, 120], [10, 146], [12, 147])],
  [coolingUncured, reads('°F', [0, 135], [30, 110], [80, 81], [95, 79], [200, 60], [380, 39])],
  [comeUpWithinSixHours, reads('°F', [0, 40], [110, 80], [220, 120], [330, 140])],
  [{ ...salmonellaKilled, authority: 'A letter' }, reads('°F', [0, 140], [6, 140], [12, 140])],
  [{ ...atMostOneLogGrown, species: 'beef' }, reads('°F', [0, 140], [60, 100], [120, 60], [180, 45])],
  [{ kind: 'weightLoss', percent: 35, source }, reads('g', [0, 1000], [9000, 640])],
  [{ kind: 'freezing', read: { what: 'centre' }, longestGapSeconds: 7200, source }, reads('°F', [0, -36], [40, -36])],
  [{ kind: 'degreeHours', ...degreeHoursFahrenheit }, [...reads('°F', [0, 80], [60, 82]), ...reads('pH', [60, 5.2])]],
];
const alone: [CriticalLimit, Parameters<typeof judgeAlone>[0]][] = [
  [coldHolding, { read: { value: 45.3, unit: '°F' } }],
  [{ kind: 'figure', of: 'fat', unit: '%', max: 30_000, source }, { read: { value: 29, unit: '%' } }],
  [{ kind: 'attestation', statement: 'It is right.', source }, { answer: { holds: true, seen: 'Label 12' } }],
];

/** A handful of verdicts, one of each kind at least: what another version judges otherwise shows in them. */
function verdicts() {
  const judged = ofSeries.map(([limit, read]) => judgeSeries(seriesOf(read), [limit], { ended: true, startAt: 0 })[0]);
  const cure = [{ mass: massOf({ value: 30, unit: 'g' }), percent: 6.25, name: 'curing salt' }];
  const conditions = [{ kind: 'nitrite' as const, least: 100_000, per: 'meat block' as const }];
  const [chilled] = judgeSeries(seriesOf(ofSeries[2]?.[1] ?? []), [coolingUncured], { ended: true });
  return [
    ...judged,
    ...alone.map(([limit, one]) => judgeAlone(one, limit, {})),
    judgeConcentration(cure, massOf({ value: 10, unit: 'kg' }), nitriteComminuted),
    chilled && underConditions(chilled, { ...coolingUncured, conditions }, {}),
    judgeCheck({ expected: 32, observed: 34.5, tolerance: 2, unit: '°F' }),
  ];
}

test('whoever changes what is judged raises the version of the rules, and writes down what it judges now', () => {
  const digest = createHash('sha256').update(canonicalJson(verdicts())).digest('hex').slice(0, 16);
  expect(`version ${RULES_VERSION}: ${digest}`).toBe('version 3: 3a60e0fc1128a02c');
});

test('every kind is among them, and they are of each sort', () => {
  const kinds = [...ofSeries, ...alone].map(([{ kind }]) => kind);
  expect(new Set(kinds).size).toBe(11);
  expect(new Set(verdicts().map((verdict) => verdict?.kind)).size).toBe(3);
});
