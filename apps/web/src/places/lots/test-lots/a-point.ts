import type { ControlPoint, ControlPointOnLot, Judged } from '@larderbook/contracts';
import type { CriticalLimit, Verdict } from '@larderbook/haccp';
import { ids } from './ids';

/** Only to show by: the figures of these limits illustrate, the published ones are in the domain. */
const example = { citation: 'example for tests', edition: '', confirmed: false };

export const dwell: CriticalLimit = {
  kind: 'dwell',
  longestGapSeconds: 900,
  source: example,
  rows: [
    { at: { '°F': 14_500, '°C': 6280 }, seconds: 240 },
    { at: { '°F': 15_800, '°C': 7000 }, seconds: 0 },
  ],
};
export const comeUp: CriticalLimit = {
  kind: 'bandTime',
  from: { '°F': 5000 },
  to: { '°F': 13_000 },
  maxSeconds: 21_600,
  longestGapSeconds: 7200,
  source: example,
};
export const cooling: CriticalLimit = {
  kind: 'cooling',
  longestGapSeconds: 5400,
  source: example,
  stages: [
    { from: { '°F': 13_000 }, to: { '°F': 8000 }, withinSeconds: 5400, counted: 'stage' },
    { from: { '°F': 8000 }, to: { '°F': 4000 }, withinSeconds: 18_000, counted: 'stage' },
  ],
};
export const nitrite: CriticalLimit = {
  kind: 'concentration',
  substance: 'sodium nitrite',
  min: 12_000,
  max: 15_625,
  printed: '156 ppm (1/4 oz per 100 lb)',
  source: example,
};
export const coldRoom: CriticalLimit = {
  kind: 'range',
  measured: 'temperature',
  max: { '°F': 4000, '°C': 440 },
  source: example,
};
export const labelRight: CriticalLimit = {
  kind: 'attestation',
  statement: 'The label names every allergen of the formula.',
  source: example,
};

type PointParts = { name: string; takenAs: ControlPoint['takenAs']; limits: CriticalLimit[] } & Omit<Partial<ControlPoint>, 'limits'>;

export function aControlPoint({ name, takenAs, limits, ...rest }: PointParts): ControlPoint {
  return {
    controlPointId: ids.of(name),
    stepId: ids.of(`step ${name}`),
    name,
    kind: 'critical',
    hazard: 'Pathogens survive or grow',
    takenAs,
    limits: limits.map((limit, i) => ({ limitId: ids.of(`${name} limit ${i}`), limit })),
    probes: [],
    monitoring: {
      what: 'Core temperature',
      how: 'Probe in the thickest piece',
      howOften: 'Every lot',
      who: 'Operator',
    },
    correctiveAction: 'Hold the lot. Go on heating until a row of the table is satisfied. Call the responsible person.',
    verification: '',
    ...rest,
  };
}

export function aPoint(parts: PointParts, onLot: Partial<Omit<ControlPointOnLot, 'controlPoint'>> = {}): ControlPointOnLot {
  return {
    controlPoint: aControlPoint(parts),
    stands: 'not-started',
    settled: false,
    judged: [],
    readings: [],
    bands: [],
    ...onLot,
  };
}

export const aVerdict = (verdict: Partial<Verdict> = {}): Verdict => ({
  kind: 'met',
  finding: 'value-within',
  figures: { read: { value: '36', unit: '°F' }, spare: { value: '4', unit: '°F' } },
  notes: [],
  ...verdict,
});

export const aJudged = (limit: CriticalLimit, verdict: Partial<Verdict> = {}): Judged => ({
  limitId: ids.of(`judged ${limit.kind}`),
  limit,
  verdict: aVerdict(verdict),
});
