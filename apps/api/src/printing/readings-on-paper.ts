import { flagWords, type ControlPoint, type ControlPointOnLot } from '@larderbook/contracts';
import type { ReadingData } from '@larderbook/documents';
import { worstVerdict } from '@larderbook/haccp';
import { amendmentsOf, corrected } from './corrected';
import type { NumberOf } from './deviation-on-paper';

type Reading = ControlPointOnLot['readings'][number];

/** Readings that count, oldest first, each with what it corrects. */
export function readingsOnPaper({ controlPoint, readings }: ControlPointOnLot, numberOf: NumberOf, clock: (at: number) => string): ReadingData[] {
  const fields = { value: sayEntered, probe: ({ probe }: Reading) => probe, 'time taken': ({ made }: Reading) => clock(Date.parse(made.at)) };
  return corrected(readings, ({ readingId }) => readingId).map((one) => {
    const { entry } = one;
    const late = entry.flags.includes('recorded-late');
    return {
      ...valueOf(entry),
      by: entry.made.name,
      at: Date.parse(entry.made.at),
      what: statementOf(controlPoint),
      probe: entry.probe || undefined,
      instrument: entry.instrument?.name,
      receivedAt: late ? Date.parse(entry.made.recordedAt) : undefined,
      flags: entry.flags.filter((flag) => flag !== 'recorded-late').map((flag) => flagWords[flag]),
      verdict: entry.judged.length > 0 ? worstVerdict(entry.judged.map(({ verdict }) => verdict)) : undefined,
      deviation: numberOf(entry.deviationId),
      amendments: amendmentsOf(one, fields),
    };
  });
}

/** A number as entered, or the answer with what was seen. */
function valueOf({ entered }: Reading): Pick<ReadingData, 'value' | 'unit' | 'note'> {
  if ('answer' in entered) return { value: entered.answer ? 'yes' : 'no', unit: '', note: entered.seen || undefined };
  return { value: String(entered.value), unit: entered.unit };
}

function sayEntered(reading: Reading): string {
  const { value, unit, note } = valueOf(reading);
  return [value, unit, note].filter(Boolean).join(' ');
}

const statementOf = ({ limits }: ControlPoint): string | undefined =>
  limits.flatMap(({ limit }) => (limit.kind === 'attestation' ? limit.statement : []))[0];
