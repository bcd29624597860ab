import { degreeHoursCelsius, degreeHoursFahrenheit, frozenByCentre, type FreezingLimit, type WeightLossLimit } from '@larderbook/haccp';
import { instant, inUnit, pointFor, takenAt, type Case, type Unit } from './a-case';
import type { Chance } from './seeded';

const HOUR = 60;

/** A chamber that swings about its warmth, and meat that gets more acid by and by. */
export function aFermentation(chance: Chance): Case {
  const unit = chance.oneOf<Unit>(['°F', '°F', '°C']);
  const limit = unit === '°F' ? degreeHoursFahrenheit : degreeHoursCelsius;
  const base = unit === '°F' ? 60 : 15.6;
  const warmth = unit === '°F' ? chance.between(72, 103) : chance.between(22, 40);
  const allowed = unit === '°F' ? (warmth < 90 ? 1200 : warmth <= 100 ? 1000 : 900) : warmth < 33 ? 665 : warmth <= 37 ? 555 : 500;
  const hours = (allowed / (warmth - base)) * chance.between(0.8, 1.1);
  const every = chance.oneOf([0.25, 0.5, 1, 1.5, 2]);
  const swing = chance.between(0, unit === '°F' ? 3 : 1.7);
  const chambers = chance.often(0.7) ? [''] : ['A', 'B'];
  const late = chance.oneOf([0, 0, 0.5, 3]);
  const air = chambers.flatMap((name) => {
    const all = [];
    for (let at = late; at <= hours + 4; at += every * chance.between(0.8, 1.1)) {
      const value = warmth - swing * (0.5 + 0.5 * Math.sin(at)) - Math.max(0, 1 - at) * 5;
      all.push(takenAt(at * HOUR, Math.round(value * 10) / 10, unit, name));
    }
    return all;
  });
  const pieces = chance.oneOf([[''], ['piece 1', 'piece 2']]);
  const acid = pieces.flatMap((name) => {
    const before = [0.25, 0.5, 0.75, 0.92].map((share) => hours * share * chance.between(0.95, 1.02));
    const all = [...before, hours, hours + chance.between(0.5, 3)];
    return all.map((at) => takenAt(at * HOUR, Math.round((5.85 - (0.56 * at) / hours) * 100) / 100, 'pH', name));
  });
  const readings = [...air, ...acid].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
  const point = pointFor({ kind: 'degreeHours', ...limit }, { errors: chance.often(0.3) ? { pH: { thousandths: 20 } } : undefined });
  const startAt = chance.often(0.85) ? instant(0) : undefined;
  return { kind: 'degreeHours', point, records: { readings, startAt, endedAt: instant((hours + 5) * HOUR) } };
}

/** Marked pieces that lose their water ever more slowly. */
export function aDrying(chance: Chance): Case {
  const percent = chance.oneOf([25, 30, 35, 40]);
  const pieces = chance.oneOf([[''], ['piece 1', 'piece 2'], ['piece 1', 'piece 2', 'piece 3']]);
  const days = chance.between(8, 60);
  const unit = chance.oneOf(['g', 'kg', 'lb'] as const);
  const readings = pieces.flatMap((name) => {
    const start = chance.between(0.3, 6) * { g: 1000, kg: 1, lb: 2.2 }[unit];
    const tau = days / chance.between(1.2, 2.5);
    const final = (percent * chance.between(0.96, 1.12)) / 100 / (1 - Math.exp(-days / tau));
    const every = chance.between(0.5, 8);
    const rounding = unit === 'g' ? 1 : 100;
    const all = [];
    for (let day = 0; day < days; day += every * chance.between(0.7, 1.2)) all.push(day);
    return [...all, days].map((day) => {
      const mass = start * (1 - final * (1 - Math.exp(-day / tau)));
      return takenAt(day * 24 * HOUR, Math.round(mass * rounding) / rounding, unit, name);
    });
  });
  const limit: WeightLossLimit = { kind: 'weightLoss', percent, source: frozenByCentre.source };
  const point = pointFor(limit, {
    probes: pieces[0] ? pieces : [],
    errors: chance.often(0.3) ? { mass: { thousandths: unit === 'g' ? 1000 : 5, unit } } : undefined,
  });
  readings.sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime());
  return { kind: 'weightLoss', point, records: { readings, endedAt: instant(days * 24 * HOUR + 60) } };
}

/** A freezer, or the centre of what lies in it, that thaws a little from time to time. */
export function aFreezing(chance: Chance, what: 'freezer' | 'centre'): Case {
  const inches = chance.oneOf([4, 12]);
  const rows =
    what === 'centre'
      ? [
          [-17.8, 106],
          [-20.6, 82],
          [-23.3, 63],
          [-26.1, 48],
          [-28.9, 35],
          [-31.7, 22],
        ]
      : inches === 4
        ? [
            [-15, 480],
            [-23.3, 240],
            [-28.9, 144],
          ]
        : [
            [-15, 720],
            [-23.3, 480],
            [-28.9, 288],
          ];
  const [bound = -20, asked = 100] = chance.oneOf(rows);
  const hours = asked * chance.between(0.95, 1.08);
  const before = chance.between(1, 20);
  const every = what === 'centre' ? chance.oneOf([0.5, 1, 1.5, 1.9]) : chance.oneOf(hours > 200 ? [1.9] : [1, 1.5, 1.9]);
  const unit = chance.oneOf<Unit>(['°F', '°C']);
  const defrost = chance.often(0.5) ? before + hours * chance.part() : undefined;
  const readings = [];
  for (let at = 0; at <= before + hours; at += every * chance.between(0.8, 1.04)) {
    const frozen = bound - 0.4 - 0.6 * Math.sin(at) ** 2;
    const isThawed = defrost !== undefined && at > defrost && at < defrost + 1;
    const value = what === 'centre' && at < before ? bound + (2 - bound) * (1 - at / before) : isThawed ? bound + 2 : frozen;
    readings.push(takenAt(at * HOUR, Math.round(inUnit(value, unit) * 10) / 10, unit, ''));
  }
  const limit: FreezingLimit = {
    ...frozenByCentre,
    read: what === 'centre' ? { what } : { what, thickness: { value: inches, unit: 'in' } },
  };
  const startAt = chance.often(0.8) ? instant(before * HOUR) : undefined;
  const point = pointFor(limit, { errors: chance.often(0.2) ? { temperature: { hundredths: 50, unit: '°F' } } : undefined });
  return {
    kind: what === 'centre' ? 'freezing by centre' : 'freezing by air',
    point,
    records: { readings, startAt, endedAt: instant((before + hours + 1) * HOUR) },
  };
}
