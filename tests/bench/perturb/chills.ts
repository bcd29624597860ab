import {
  atMostOneLogGrown,
  coolingCured,
  coolingFoodCode,
  coolingFromCooking,
  coolingFromCookingStrict,
  coolingUncured,
  type CoolingLimit,
  type GrowthLimit,
} from '@larderbook/haccp';
import { instant, inUnit, moments, pointFor, readAs, readingsOf, spareOf, statedPiece, takenAt, type Case, type Kind } from './a-case';
import { coreIn, passes, type Medium, type Shape } from './body';
import type { Chance } from './seeded';

const FROM_STAGES: readonly CoolingLimit[] = [coolingUncured, coolingFoodCode, coolingFromCooking, coolingFromCookingStrict, coolingCured];
/** 90 min to 10 °C as guidance has it; alone, and before stages of other clocks. */
const FROM_COOKING: readonly CoolingLimit[] = [
  { ...coolingFoodCode, stages: [{ to: { '°F': 5000, '°C': 1000 }, withinSeconds: 150 * 60, counted: 'end of cooking' }] },
  {
    ...coolingFoodCode,
    stages: [
      { to: { '°F': 8000, '°C': 2670 }, withinSeconds: 120 * 60, counted: 'end of cooking' },
      { from: { '°F': 8000, '°C': 2670 }, to: { '°F': 5000, '°C': 1000 }, withinSeconds: 150 * 60, counted: 'stage' },
      { from: { '°F': 5000, '°C': 1000 }, to: { '°F': 4000, '°C': 440 }, withinSeconds: 400 * 60, counted: 'start' },
    ],
  },
];

export const aChill = (chance: Chance): Case => chillOf(chance, 'cooling from stages', chance.oneOf(FROM_STAGES));
export const aChillFromCooking = (chance: Chance): Case => chillOf(chance, 'cooling from end of cooking', chance.oneOf(FROM_COOKING));
export const aGrowth = (chance: Chance): Case => chillOf(chance, 'growth', atMostOneLogGrown);

type Chill = { shape: Shape; medium: Medium; ended: number; celsius: number; curve: ReturnType<typeof coreIn> };

/** Cooked on to the end, some time on the bench, then a chiller whose door may stand open for a while. */
function aChilledBody(chance: Chance): Chill {
  const shape = chance.oneOf<Shape>(['slab', 'cylinder', 'sphere']);
  const start = chance.between(64, 76);
  const ended = chance.between(0.02, 0.3);
  const bench = chance.often(0.6) ? chance.between(0, 0.15) : 0;
  const celsius = chance.between(-2, 3);
  const door = ended + bench + chance.between(0.3, 1);
  const open = chance.often(0.4)
    ? [
        { from: door, celsius: celsius + chance.between(3, 25) },
        { from: door + chance.between(0.05, 0.4), celsius },
      ]
    : [];
  const medium = [
    { from: 0, celsius: start + chance.between(-1, 12) },
    { from: ended, celsius: bench > 0 ? chance.between(16, 28) : celsius },
    { from: ended + bench, celsius },
    ...open,
  ];
  return { shape, medium, ended, celsius, curve: coreIn(shape, medium, start, chance.between(0.01, 0.2), 6) };
}

function chillOf(chance: Chance, kind: Kind, limit: CoolingLimit | GrowthLimit): Case {
  const { shape, ended, celsius, curve } = aChilledBody(chance);
  const minutesPerUnit = kind === 'growth' ? chance.between(60, 500) : paceOf(chance, limit as CoolingLimit, ended, curve);
  const endAt = ended * minutesPerUnit;
  const finished = Math.min((passes(curve, 4, 'down', ended) ?? 6) * minutesPerUnit * chance.between(1, 1.15), 6 * minutesPerUnit);
  const names = chance.oneOf([[''], [''], ['A', 'B'], ['A', 'B', 'C']]);
  const from = chance.oneOf([0, Math.max(0, endAt - 10), endAt, endAt + chance.between(0, 30)].map(Math.round));
  const around = chance.oneOf([undefined, 'Air of the chiller']);
  const setPoint = around && chance.often(0.5) ? { value: Math.round(celsius), unit: '°C' as const } : undefined;
  const cores = names.flatMap((name) => readingsOf(curve, minutesPerUnit, moments(chance, from, finished), readAs(chance, name)));
  const air = around
    ? moments(chance, Math.round(endAt), finished, 120)
        .slice(0, 20)
        .map((minute) => takenAt(minute, Math.round(inUnit(celsius + chance.between(-1, 1), '°C') * 10) / 10, '°C', around))
    : [];
  const readings = [...cores, ...air].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
  const point = pointFor(limit, {
    probes: names[0] ? names : [],
    piece: statedPiece(chance, shape, minutesPerUnit),
    surroundings: around ? { name: around, setPoint } : undefined,
    errors: chance.often(0.3) ? { temperature: { hundredths: 100, unit: '°F' } } : undefined,
  });
  const startAt = chance.often(0.75) ? instant(endAt) : undefined;
  const last = readings[readings.length - 1];
  const records = { readings, startAt, endedAt: new Date((last?.takenAt ?? instant(0)).getTime() + 60_000) };
  return limit.kind === 'growth' ? nearTo(chance, { kind, point, records }, limit) : { kind, point, records };
}

/** The limit so near to what the curve predicts that it is just kept or just not. */
function nearTo(chance: Chance, one: Case, limit: GrowthLimit): Case {
  const loose = { ...limit, log10: 1_000_000, longestGapSeconds: chance.oneOf([900, 3600]) };
  const grown = loose.log10 - spareOf(one, loose);
  const log10 = Math.max(1, Math.round(grown * chance.between(0.6, 1.6)));
  return { ...one, point: { ...one.point, limits: [{ limitId: 'limit', limit: { ...loose, log10 } }] } };
}

/** So big a piece that the slowest of its stages takes nearly the time it is allowed. */
function paceOf(chance: Chance, { stages }: CoolingLimit, ended: number, curve: Chill['curve']): number {
  const bound = (at: { '°C'?: number }) => (at['°C'] ?? 0) / 100;
  const first = stages[0]?.from;
  const shares = stages.map(({ from, to, counted, withinSeconds }) => {
    const starts = counted === 'stage' ? from : first;
    const begin = starts ? (passes(curve, bound(starts), 'down', ended) ?? ended) : ended;
    return withinSeconds / 60 / Math.max(0.02, (passes(curve, bound(to), 'down', begin) ?? 6) - begin);
  });
  return Math.max(4, Math.min(...shares) * chance.between(0.7, 1.1));
}
