import { judgeControlPoint } from '../../../apps/api/src/lots/judge-control-point';
import { START, type Case } from './a-case';
import { kinds, perturb, type Report, type Wrong } from './perturb-cases';

/** How many of each kind, the seed, and the names of kinds where not all are meant. */
const [asked, given, ...only] = process.argv.slice(2);
const runs = Number(asked ?? 20_000);
const seed = Number(given ?? 20_260_302);
console.log(`${runs} perturbed series of each kind, seed ${seed}\n`);

let failed = 0;
for (const kind of kinds.filter((one) => only.length === 0 || only.includes(one))) {
  const began = performance.now();
  const report = perturb(kind, runs, seed);
  failed += report.wrong.length;
  say(kind, report, performance.now() - began);
}
if (failed > 0) {
  console.error(`${failed} went to met and no exception says why.`);
  process.exitCode = 1;
}

function say(kind: string, { met, missed, undetermined, runs: all, by, wrong }: Report, took: number): void {
  console.log(`${kind}: ${all} perturbed of ${met} met, ${missed} missed, ${undetermined} undetermined; ${(took / 1000).toFixed(1)} s`);
  for (const [name, { runs: own, notMet, excused, unasked }] of by) {
    const why = Object.entries(excused).map(([exception, count]) => `${count} ${exception}`);
    const asked = unasked > 0 ? `, ${unasked} of them not asked about` : '';
    const bad = wrong.filter(({ perturbation }) => perturbation === name).length;
    console.log(
      `  ${name}: ${own}, of ${notMet} not met ${bad} went to met${why.length > 0 ? `; by exception ${why.join(', ')}${asked}` : ''}`,
    );
  }
  for (const one of wrong.slice(0, Number(process.env.SHOWN ?? 3))) console.log(sayWrong(one));
}

/** All that is needed to see it again. */
function sayWrong({ perturbation, seed: own, was, one, perturbed }: Wrong): string {
  const after = { ...one, ...perturbed, point: perturbed.point ?? one.point };
  return `  ! ${perturbation}, seed ${own}: ${was} → met\n    ${judgeControlPoint(one.point, one.records).judged[0]?.verdict.finding}\n    ${sayLimit(one)}\n    ${sayCase(one)}\n    ${sayCase(after)}`;
}

function sayLimit({ point }: Case): string {
  return JSON.stringify(point.limits.map(({ limit }) => ({ ...limit, source: undefined, conditions: undefined })));
}

function sayCase({ point, records }: Case): string {
  const minute = (at: Date | undefined) => (at ? Math.round((at.getTime() - START) / 600) / 100 : 'none');
  const read = records.readings.map(
    ({ takenAt, value, unit, probe, word }) => `${minute(takenAt)}${probe && ` ${probe}`} ${value} ${unit}${word ? ` (${word})` : ''}`,
  );
  const known = `start ${minute(records.startAt)}, end ${minute(records.endedAt)}, ${JSON.stringify({ piece: point.piece, errors: point.errors, around: point.surroundings })}`;
  return `${known}: ${read.slice(0, 40).join('; ')}${read.length > 40 ? `; … ${read.length}` : ''}`;
}
