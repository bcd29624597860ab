import {
  comeUpWithinSixHours,
  cookedMeat65Log,
  groundMeatFoodCode,
  roastFoodCode,
  salmonellaKilled,
  type DwellLimit,
  type SeriesLimit,
} from '@larderbook/haccp';
import { instant, inUnit, moments, pointFor, readAs, readingsOf, spareOf, statedPiece, takenAt, type Case, type Kind } from './a-case';
import { coreIn, passes, type Medium, type Shape } from './body';
import type { Chance } from './seeded';

const TABLES: readonly DwellLimit[] = [cookedMeat65Log, roastFoodCode, groundMeatFoodCode];
const supported = { ...salmonellaKilled, authority: 'A process authority, letter in folder 3' };

export const aHold = (chance: Chance): Case => cookOf(chance, 'dwell');
export const aComeUp = (chance: Chance): Case => cookOf(chance, 'bandTime');
export const aKill = (chance: Chance): Case => cookOf(chance, 'lethality');

/** An oven that was opened or burnt low for a while, and at the end the piece taken out and left to cool. */
function cookOf(chance: Chance, kind: 'dwell' | 'bandTime' | 'lethality'): Case {
  const shape = chance.oneOf<Shape>(['slab', 'cylinder', 'sphere']);
  const table = chance.oneOf(TABLES);
  const row = chance.oneOf(table.rows.filter(({ seconds }) => seconds >= 60));
  const top = (row.at['°C'] ?? 6000) / 100;
  const oven = top + chance.between(0.5, kind === 'bandTime' ? 15 : 5);
  const dip = chance.between(0.3, 1.2);
  const out = chance.between(0.6, 1.6);
  const opened: Medium = chance.often(0.4)
    ? [
        { from: dip, celsius: oven - chance.between(3, 30) },
        { from: dip + chance.between(0.03, 0.3), celsius: oven },
      ]
    : [];
  const medium = [{ from: 0, celsius: oven }, ...opened, { from: out + 0.3, celsius: chance.between(3, 40) }].sort(
    (a, b) => a.from - b.from,
  );
  const curve = coreIn(shape, medium, chance.between(2, 8), chance.between(0.01, 0.3), 2.6);
  const minutesPerUnit = paceOf(chance, kind, row.seconds, curve, top);
  const until = (out + 0.6) * minutesPerUnit;
  const names = chance.oneOf([[''], [''], ['A', 'B'], ['A', 'B', 'C']]);
  const around = chance.oneOf([undefined, undefined, 'Air of the oven']);
  const from = chance.oneOf([0, 0, (passes(curve, 40, 'up') ?? 0) * minutesPerUnit]);
  const cores = names.flatMap((name) =>
    readingsOf(curve, minutesPerUnit, moments(chance, Math.round(from), until, 30), readAs(chance, name)),
  );
  const air = around
    ? moments(chance, 0, until, 60)
        .slice(0, 20)
        .map((minute) => takenAt(minute, Math.round(inUnit(oven + chance.between(-2, 2), '°C')), '°C', around))
    : [];
  const readings = [...cores, ...air].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
  const limit: SeriesLimit =
    kind === 'lethality' ? supported : kind === 'bandTime' ? comeUpWithinSixHours : chance.often(0.5) ? table : { ...table, rows: [row] };
  const point = pointFor(limit, {
    probes: names[0] ? names : [],
    piece: statedPiece(chance, shape, minutesPerUnit),
    surroundings: around ? { name: around, setPoint: chance.often(0.5) ? { value: Math.round(oven), unit: '°C' } : undefined } : undefined,
    errors: chance.often(0.3) ? { temperature: { hundredths: 100, unit: '°F' } } : undefined,
  });
  const startAt = chance.often(0.5) ? instant(0) : undefined;
  const records = { readings, startAt, endedAt: instant(until + 1) };
  return kind === 'lethality' ? nearTo(chance, { kind, point, records }) : { kind, point, records };
}

/** So big a piece that it holds, or comes up, for nearly the time that counts. */
function paceOf(chance: Chance, kind: Kind, seconds: number, curve: ReturnType<typeof coreIn>, top: number): number {
  const { core, step } = curve;
  if (kind === 'lethality') return chance.between(15, 240);
  const held = core.filter((one) => one >= top).length * step;
  const comeUp =
    core
      .slice(
        0,
        Math.max(
          1,
          core.findIndex((one) => one >= 54.4),
        ),
      )
      .filter((one) => one > 10).length * step;
  const asked = kind === 'dwell' ? seconds / 60 / Math.max(0.01, held) : 360 / Math.max(0.02, comeUp);
  return Math.min(2500, Math.max(3, asked * (kind === 'dwell' ? chance.between(0.9, 2) : chance.between(0.75, 1.1))));
}

function nearTo(chance: Chance, one: Case): Case {
  const far = { ...supported, log10: 5_000 };
  const killed = far.log10 + spareOf(one, far);
  const log10 = Math.min(5_000, Math.max(1, Math.round(killed * chance.between(0.8, 1.2))));
  return { ...one, point: { ...one.point, limits: [{ limitId: 'limit', limit: { ...far, log10 } }] } };
}
