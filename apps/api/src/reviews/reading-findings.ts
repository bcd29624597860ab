import { ofProduct, type ControlPointOnLot, type Finding } from '@larderbook/contracts';
import { readingsDue, timeOf, type Coded, type Frequency } from '@larderbook/haccp';
import { sentence } from '../platform/account';

type Reading = ControlPointOnLot['readings'][number];

/** Too few readings are only reported; the limit itself gives the verdict. */
export function readingFindings(point: ControlPointOnLot): Finding[] {
  const { controlPoint } = point;
  const counting = ofProduct(controlPoint, point.readings).filter(isCounting);
  if (counting.length === 0 || controlPoint.takenAs === 'weighings') return [];
  const { name } = controlPoint;
  const found = [
    ...(controlPoint.frequency ? tooFew(name, controlPoint.frequency, counting) : []),
    ...notRead(name, controlPoint.probes, counting),
  ];
  return found.map((what) => ({
    about: 'control-point',
    kind: 'flagged',
    what: [what],
    next: [sentence('look-for-readings')],
    blocks: false,
    controlPointId: controlPoint.controlPointId,
  }));
}

const isCounting = ({ amendedBy, voided, clarifications }: Reading): boolean =>
  !amendedBy && !voided && clarifications?.at(-1)?.word !== 'not of the core';

function tooFew(point: string, frequency: Frequency, readings: readonly Reading[]): Coded[] {
  const { missing, longest } = readingsDue(
    frequency,
    readings.map(({ made }) => Date.parse(made.at)),
  );
  if (missing === 0) return [];
  const counted = { point, count: readings.length, missing };
  return 'everyMinutes' in frequency
    ? [sentence('too-few-in-time', { ...counted, longest: timeOf(longest), every: timeOf(frequency.everyMinutes * 60_000) })]
    : [sentence('too-few-in-lot', { ...counted, times: frequency.timesInALot })];
}

/** With one named probe, every reading is of it. */
function notRead(point: string, probes: readonly string[], readings: readonly Reading[]): Coded[] {
  const read = new Set(readings.map(({ probe }) => probe));
  const silent = probes.length > 1 ? probes.filter((probe) => !read.has(probe)) : [];
  return silent.length > 0 ? [sentence('probes-not-read', { point, probes: silent })] : [];
}
