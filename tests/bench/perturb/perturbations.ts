import type { Taken } from '../../../apps/api/src/lots/judge-reading';
import { inCelsius, MINUTE, takenAt, type Case } from './a-case';
import type { Chance } from './seeded';

/** A case as it would be kept with one thing wrong, and the readings that are wrong or gone. */
export type Perturbed = {
  records: Case['records'];
  point?: Case['point'];
  wrong?: Taken[];
  gone?: Taken[];
  added?: Taken[];
  moved?: Taken[];
};
export type Perturbation = (one: Case, chance: Chance) => Perturbed | undefined;

const HOUR = 60 * MINUTE;
const later = (at: Date, by: number): Date => new Date(at.getTime() + by);

/** Those of the product, as the limit is judged from them. */
export const ofCore = ({ point, records }: Case): readonly Taken[] =>
  records.readings.filter(({ probe }) => probe !== point.surroundings?.name);

const pick = (one: Case, chance: Chance): Taken | undefined => {
  const own = ofCore(one);
  return own.length > 2 ? chance.oneOf(own) : undefined;
};

const drop = ({ records }: Case, gone: readonly Taken[]): Perturbed => ({
  records: { ...records, readings: records.readings.filter((own) => !gone.includes(own)) },
  gone: [...gone],
});

const replace = ({ records }: Case, by: ReadonlyMap<Taken, Taken>): Perturbed => ({
  records: { ...records, readings: records.readings.map((own) => by.get(own) ?? own) },
  gone: [...by.keys()],
  wrong: [...by.values()],
});

const changed = (one: Case, chance: Chance, how: (own: Taken) => Partial<Taken> | undefined): Perturbed | undefined => {
  const own = pick(one, chance);
  const change = own && how(own);
  return own && change && replace(one, new Map([[own, { ...own, ...change }]]));
};

/** A run of one probe's readings from somewhere on, to somewhere or to the end. */
function aRun(one: Case, chance: Chance): readonly Taken[] {
  const first = pick(one, chance);
  const own = ofCore(one).filter((reading) => first && reading.probe === first.probe && reading.unit === first.unit);
  const from = chance.whole(1, Math.max(1, own.length - 1));
  return own.slice(from, chance.often(0.5) ? undefined : from + chance.whole(1, 8));
}

const moved = (one: Case, run: readonly Taken[], by: (own: Taken) => Date): Perturbed | undefined =>
  run.length === 0
    ? undefined
    : { ...replace(one, new Map(run.map((own) => [own, { ...own, takenAt: by(own) }]))), gone: [], wrong: [], moved: [...run] };

const added = ({ records }: Case, reading: Taken): Perturbed => ({
  records: { ...records, readings: [...records.readings, reading].sort((a, b) => a.takenAt.getTime() - b.takenAt.getTime()) },
  added: [reading],
  wrong: [reading],
});

const OTHER: Record<string, readonly string[]> = { '°F': ['°C'], '°C': ['°F'], g: ['oz'], kg: ['lb'], lb: ['kg', 'oz'], pH: [] };
const isTemperature = ({ unit }: Taken) => unit === '°F' || unit === '°C';
const extreme = (one: Case, chance: Chance): Taken[] => {
  const own = pick(one, chance);
  const same = ofCore(one).filter(({ probe, unit }) => own && probe === own.probe && unit === own.unit);
  const sorted = [...same].sort((a, b) => (a.value ?? 0) - (b.value ?? 0));
  return chance.often(0.5) ? sorted.slice(0, 1) : sorted.slice(-1);
};

export const perturbations: Record<string, Perturbation> = {
  'one reading lost': (one, chance) => {
    const own = pick(one, chance);
    return own && drop(one, [own]);
  },
  'several readings lost': (one, chance) => {
    const share = chance.between(0.05, 0.7);
    return drop(
      one,
      ofCore(one).filter(() => chance.often(share)),
    );
  },
  'the first readings lost': (one, chance) => drop(one, ofCore(one).slice(0, chance.whole(1, 4))),
  'the last readings lost': (one, chance) => drop(one, ofCore(one).slice(-chance.whole(1, 4))),
  'the highest or lowest lost': (one, chance) => drop(one, extreme(one, chance)),
  'a gap': (one, chance) => {
    const own = pick(one, chance);
    const width = chance.between(0.2, 3) * HOUR;
    return (
      own &&
      drop(
        one,
        ofCore(one).filter(({ takenAt: at }) => at > own.takenAt && at.getTime() < own.takenAt.getTime() + width),
      )
    );
  },
  'readings of one piece or probe lost': (one, chance) => {
    const own = pick(one, chance);
    const same = ofCore(one).filter(({ probe, unit }) => own && probe === own.probe && unit === own.unit);
    return drop(
      one,
      same.filter(() => chance.often(0.6)),
    );
  },
  'a silent probe': (one, chance) => {
    const own = one.point.probes.length > 0 ? pick(one, chance) : undefined;
    return (
      own &&
      drop(
        one,
        ofCore(one).filter(({ probe }) => probe === own.probe),
      )
    );
  },
  'start or end of cooking later': ({ records }, chance) =>
    records.startAt && { records: { ...records, startAt: later(records.startAt, chance.oneOf([5, 20, 45, 60, 90, 180, 400]) * MINUTE) } },
  'start or end of cooking earlier': ({ records }, chance) =>
    records.startAt && { records: { ...records, startAt: later(records.startAt, -chance.oneOf([5, 20, 45, 60, 90, 180, 400]) * MINUTE) } },
  'start or end of cooking never': ({ records }) => records.startAt && { records: { ...records, startAt: undefined } },
  'stage never ended': ({ records }) => ({ records: { ...records, endedAt: undefined } }),
  'stage ended twice': ({ records }, chance) =>
    records.endedAt && { records: { ...records, endedAt: later(records.endedAt, chance.oneOf([-300, -60, 60, 600]) * MINUTE) } },
  'a larger error': ({ records, point }, chance) => {
    const temperature = {
      hundredths: (point.errors?.temperature?.hundredths ?? 0) + chance.oneOf([50, 100, 200, 400]),
      unit: '°F' as const,
    };
    const mass = { thousandths: chance.oneOf([5, 50, 500]) * 1000, unit: 'g' as const };
    return { records, point: { ...point, errors: { temperature, pH: { thousandths: chance.oneOf([50, 100]) }, mass } } };
  },
  'the other unit': (one, chance) =>
    changed(one, chance, ({ unit }) => {
      const units = OTHER[unit ?? ''] ?? [];
      return units.length > 0 ? { unit: chance.oneOf(units) } : undefined;
    }),
  'a slipped point': (one, chance) =>
    changed(one, chance, ({ value }) => ({
      value: Math.round((value ?? 0) * chance.oneOf([0.1, 0.01, 10]) * 100) / 100,
    })),
  'two digits changed over': (one, chance) =>
    changed(one, chance, ({ value }) => {
      const text = String(value);
      const at = chance.whole(0, Math.max(0, text.length - 2));
      const typed = Number(`${text.slice(0, at)}${text[at + 1] ?? ''}${text[at] ?? ''}${text.slice(at + 2)}`);
      return typed === value || !Number.isFinite(typed) ? undefined : { value: typed };
    }),
  'two neighbours changed over': (one, chance) => {
    const own = pick(one, chance);
    const same = ofCore(one).filter(({ probe, unit }) => own && probe === own.probe && unit === own.unit);
    const at = chance.whole(0, Math.max(0, same.length - 2));
    const [a, b] = [same[at], same[at + 1]];
    return a && b && a.value !== b.value
      ? replace(
          one,
          new Map([
            [a, { ...a, value: b.value }],
            [b, { ...b, value: a.value }],
          ]),
        )
      : undefined;
  },
  'a clock an hour ahead': (one, chance) => moved(one, aRun(one, chance), ({ takenAt: at }) => later(at, HOUR)),
  'a clock an hour behind': (one, chance) => moved(one, aRun(one, chance), ({ takenAt: at }) => later(at, -HOUR)),
  'a logger’s clock an hour ahead': (one, chance) => imported(moved(one, aRun(one, chance), ({ takenAt: at }) => later(at, HOUR))),
  'a logger’s clock an hour behind': (one, chance) => imported(moved(one, aRun(one, chance), ({ takenAt: at }) => later(at, -HOUR))),
  'a clock that was lost': (one, chance) => {
    const run = aRun(one, chance);
    const first = run[0]?.takenAt.getTime() ?? 0;
    return imported(moved(one, run, ({ takenAt: at }) => new Date(at.getTime() - first + Date.parse('2000-01-01T00:00:00Z'))));
  },
  'a clock in the future': (one, chance) =>
    moved(one, aRun(one, chance), ({ takenAt: at }) => later(at, chance.oneOf([10, 30, 90, 600]) * MINUTE)),
  'read before now has come': ({ records }, chance) => {
    const own = chance.oneOf(records.readings).takenAt;
    return { records: { ...records, now: later(own, -5 * MINUTE) } };
  },
  'another value of one instant': (one, chance) => {
    const own = pick(one, chance);
    return own && added(one, { ...own, id: `${own.id}b`, value: Math.round((own.value ?? 0) * chance.between(0.7, 1.3) * 10) / 10 });
  },
  'a reading of the air or of ice water': (one, chance) => {
    const own = pick(one, chance);
    if (!own || !isTemperature(own)) return undefined;
    const celsius = chance.oneOf([0, 0, 3, 21, 85]);
    const value = own.unit === '°C' ? celsius : Math.round(celsius * 1.8 + 32);
    const minute = (own.takenAt.getTime() - Date.parse('2026-03-02T06:00:00Z')) / MINUTE + chance.oneOf([-2, 1, 4, 15]);
    return added(one, takenAt(minute, value, own.unit, own.probe));
  },
  'what it lies in misread': (one, chance) => {
    const misread = misreadAround(one, chance);
    return misread && { ...misread, gone: [], wrong: [] };
  },
  'a reading of the air or of ice water, and what it lies in misread': (one, chance) => {
    const beside = perturbations['a reading of the air or of ice water']?.(one, chance);
    const misread = beside && misreadAround({ ...one, ...beside, point: one.point }, chance);
    return misread && { ...beside, records: misread.records };
  },
  'entered late': (one, chance) =>
    changed(one, chance, ({ takenAt: at }) => ({ arrivedAt: later(at, chance.oneOf([20, 60, 200, 1440]) * MINUTE) })),
  'corrected to a wrong value': (one, chance) =>
    changed(one, chance, ({ value, unit }) => ({
      value: Math.round((value ?? 0) * (unit === 'pH' ? chance.between(0.9, 1.05) : chance.between(0.6, 1.4)) * 10) / 10,
    })),
  'one reading said to be not of the core': (one, chance) => {
    const said = changed(one, chance, () => ({ word: 'not of the core' }));
    return said && { ...said, wrong: [] };
  },
  'read from the oven, the first said to be not of the core': (one, chance) => {
    const run = aRun(one, chance).filter(isTemperature);
    const hot = chance.between(74, 90);
    const air = run.map((own, index): Taken => {
      const celsius = hot + index * 0.05;
      const value = Math.round((own.unit === '°C' ? celsius : celsius * 1.8 + 32) * 10) / 10;
      return { ...own, value, word: index === 0 ? 'not of the core' : undefined };
    });
    return wrongAfterTheFirst(one, run, air);
  },
  'read from the air, the first said to be not of the core': (one, chance) => {
    const run = aRun(one, chance).filter(isTemperature);
    const cold = chance.between(0, 4);
    const air = run.map((own, index): Taken => {
      const value = Math.round((own.unit === '°C' ? cold : cold * 1.8 + 32) * 10) / 10;
      return { ...own, value, word: index === 0 ? 'not of the core' : undefined };
    });
    return wrongAfterTheFirst(one, run, air);
  },
};

/** One value of the surroundings slipped, in another unit, or read in the sun or in dry ice. */
function misreadAround(one: Case, chance: Chance): Perturbed | undefined {
  const around = one.records.readings.filter((own) => own.probe === one.point.surroundings?.name && isTemperature(own));
  const own = around.length > 0 ? chance.oneOf(around) : undefined;
  if (!own) return undefined;
  const value = chance.oneOf([-40, -18, 50, 120, 260, (own.value ?? 0) * 10, -(own.value ?? 0)]);
  return replace(one, new Map([[own, { ...own, value }]]));
}

/** The first is said to be what it is, the others stand. */
function wrongAfterTheFirst(one: Case, run: readonly Taken[], air: readonly Taken[]): Perturbed | undefined {
  if (run.length < 2) return undefined;
  const perturbed = replace(one, new Map(run.map((own, index) => [own, air[index] as Taken])));
  return { ...perturbed, wrong: air.slice(1) };
}

/** All kept at once, when the logger was read: the order is the file's, and nothing tells when each was read. */
function imported(perturbed: Perturbed | undefined): Perturbed | undefined {
  if (!perturbed) return undefined;
  const last = Math.max(...perturbed.records.readings.map(({ takenAt: at }) => at.getTime()));
  const arrivedAt = new Date(last + 10 * MINUTE);
  return { ...perturbed, records: { ...perturbed.records, readings: perturbed.records.readings.map((own) => ({ ...own, arrivedAt })) } };
}

export const celsiusOf = ({ value, unit }: Taken): number => inCelsius(value ?? NaN, unit);
