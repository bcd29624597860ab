import { judgeControlPoint } from '../../../apps/api/src/lots/judge-control-point';
import type { Case, Kind } from './a-case';
import { aChill, aChillFromCooking, aGrowth } from './chills';
import { aComeUp, aHold, aKill } from './cooks';
import { aDrying, aFermentation, aFreezing } from './days';
import { exceptions, isAsked, type Exception } from './exceptions';
import { perturbations, type Perturbed } from './perturbations';
import { chanceFrom, type Chance } from './seeded';

const cases: Record<Kind, (chance: Chance) => Case> = {
  dwell: aHold,
  'cooling from stages': aChill,
  'cooling from end of cooking': aChillFromCooking,
  bandTime: aComeUp,
  lethality: aKill,
  growth: aGrowth,
  degreeHours: aFermentation,
  weightLoss: aDrying,
  'freezing by air': (chance) => aFreezing(chance, 'freezer'),
  'freezing by centre': (chance) => aFreezing(chance, 'centre'),
};
export const kinds = Object.keys(cases) as Kind[];

/** Not met as it was read, and met with something wrong in it. */
export type Wrong = { kind: Kind; perturbation: string; seed: number; was: string; one: Case; perturbed: Perturbed };
export type Count = { runs: number; notMet: number; excused: Partial<Record<Exception, number>>; unasked: number };
export type Report = { met: number; missed: number; undetermined: number; runs: number; by: Map<string, Count>; wrong: Wrong[] };

/** True curves, each with every perturbation in turn, until so many were judged. */
export function perturb(kind: Kind, runs: number, seed: number): Report {
  const report: Report = { met: 0, missed: 0, undetermined: 0, runs: 0, by: new Map(), wrong: [] };
  for (let number = 0; report.runs < runs; number += 1) {
    const own = (seed + Math.imul(number + 1, 2654435761)) >>> 0;
    const one = cases[kind](chanceFrom(own));
    const was = standsOf(one);
    report[was] += 1;
    Object.entries(perturbations).forEach(([name, perturbation], index) => {
      const perturbed = perturbation(one, chanceFrom(own + index + 1));
      if (perturbed) take(report, { kind, perturbation: name, seed: own, was, one, perturbed });
    });
  }
  return report;
}

function take(report: Report, wrong: Wrong): void {
  const count = report.by.get(wrong.perturbation) ?? { runs: 0, notMet: 0, excused: {}, unasked: 0 };
  report.by.set(wrong.perturbation, count);
  report.runs += 1;
  count.runs += 1;
  if (wrong.was === 'met') return;
  count.notMet += 1;
  const { one, perturbed } = wrong;
  if (standsOf({ ...one, ...perturbed, point: perturbed.point ?? one.point }) !== 'met') return;
  const why = (Object.keys(exceptions) as Exception[]).find((name) => exceptions[name](one, perturbed));
  if (!why) report.wrong.push(wrong);
  else {
    count.excused[why] = (count.excused[why] ?? 0) + 1;
    if (why === 'a wrong value that the piece can have had' && !isAsked(one, perturbed)) count.unasked += 1;
  }
}

export function standsOf({ point, records }: Case): 'met' | 'missed' | 'undetermined' {
  const [judged] = judgeControlPoint(point, records).judged;
  return judged?.verdict.kind ?? 'undetermined';
}
