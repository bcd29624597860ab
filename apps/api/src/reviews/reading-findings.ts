import { ofProduct, type ControlPointOnLot, type Finding } from '@larderbook/contracts';
import { readingsDue, formatDuration, type Frequency } from '@larderbook/haccp';
import { englishLimits } from '../platform/tell';

type Reading = ControlPointOnLot['readings'][number];

/** Too few readings are only reported; the limit itself gives the verdict. */
export function readingFindings(point: ControlPointOnLot): Finding[] {
  const { controlPoint } = point;
  const counting = ofProduct(controlPoint, point.readings).filter(isCounting);
  if (counting.length === 0 || controlPoint.takenAs === 'weighings') return [];
  const said = [...(controlPoint.frequency ? tooFew(controlPoint.frequency, counting) : []), ...notRead(controlPoint.probes, counting)];
  return said.map((what) => ({
    about: 'control-point',
    kind: 'flagged',
    what: `${controlPoint.name}: ${what}`,
    next: 'Look whether it was measured and not recorded, or say in the statement why fewer are enough.',
    blocks: false,
    controlPointId: controlPoint.controlPointId,
  }));
}

const isCounting = ({ amendedBy, voided, clarifications }: Reading): boolean =>
  !amendedBy && !voided && clarifications?.at(-1)?.word !== 'not of the core';

function tooFew(frequency: Frequency, readings: readonly Reading[]): string[] {
  const { missing, longest } = readingsDue(
    frequency,
    readings.map(({ made }) => Date.parse(made.at)),
  );
  if (missing === 0) return [];
  const without = 'everyMinutes' in frequency ? `, ${formatDuration(longest)} at the longest without one` : '';
  return [
    `${counted(readings.length)}${without}, where the plan asks for one ${englishLimits.sayFrequency(frequency)}: ${missing} fewer than it asks.`,
  ];
}

/** With one named probe, every reading is of it. */
function notRead(probes: readonly string[], readings: readonly Reading[]): string[] {
  const read = new Set(readings.map(({ probe }) => probe));
  const silent = probes.length > 1 ? probes.filter((probe) => !read.has(probe)) : [];
  return silent.length > 0 ? [`the plan names ${silent.join(', ')}, and nobody read it.`] : [];
}

const counted = (count: number): string => (count === 1 ? '1 reading' : `${count} readings`);
