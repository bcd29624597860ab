import { type ControlPoint, type ControlPointOnLot, type Deviation, type Judged, type Lot } from '@larderbook/contracts';
import type { ReadingData } from '@larderbook/documents';
import { isTwoTimes, formatRead } from '@larderbook/haccp';
import { sayAnswered, sayHumidFrom } from '@larderbook/messages';
import { toldWorst } from './told-worst';
import { clarified } from './clarified';
import { amendmentsOf, corrected } from './corrected';
import { numbersOf, type NumberOf } from './deviation-on-paper';
import { flagsOnPaper } from './flags-on-paper';
import { judgedOnPaper } from './limits-on-paper';
import { probeOnPaper } from './probe-on-paper';
import type { Telling } from './telling';
import { formatEntered } from './format-weight';

type Reading = ControlPointOnLot['readings'][number];
type Weighing = Lot['weighings'][number];

/** Oldest first. */
export const entriesOnPaper = (lot: Lot, point: ControlPointOnLot, own: readonly Deviation[], telling: Telling): ReadingData[] =>
  point.controlPoint.takenAs === 'weighings'
    ? weighingsAt(lot, point.controlPoint, own, telling)
    : readingsAt(point, numbersOf(own, telling.say), telling);

function weighingsAt({ weighings }: Lot, { controlPointId }: ControlPoint, own: readonly Deviation[], telling: Telling): ReadingData[] {
  const { instant, say } = telling;
  const fields = {
    [say('field-weight')]: ({ weight }: Weighing) => formatEntered(weight),
    [say('field-time')]: ({ made }: Weighing) => instant(Date.parse(made.at)),
  };
  const here = corrected(weighings, ({ weighingId }) => weighingId).filter(({ entry }) => entry.controlPointId === controlPointId);
  return here.map((one) => ({
    ...signedOf(one.entry, telling),
    value: String(one.entry.weight.value),
    unit: one.entry.weight.unit,
    what: one.entry.item.name,
    deviation: judgedOnPaper(one.entry.judged, controlPointId, own, telling).find(({ verdict }) => verdict.kind === 'missed')?.deviation,
    amendments: amendmentsOf(one, fields),
  }));
}

function readingsAt({ controlPoint, readings }: ControlPointOnLot, numberOf: NumberOf, telling: Telling): ReadingData[] {
  const { instant, say } = telling;
  const fields = {
    [say('field-value')]: (reading: Reading) => sayEntered(reading, telling),
    [say('field-probe')]: ({ probe }: Reading) => probe,
    [say('field-time')]: ({ made }: Reading) => instant(Date.parse(made.at)),
  };
  return corrected(readings, ({ readingId }) => readingId).map((one) => ({
    ...signedOf(one.entry, telling),
    ...valueOf(one.entry, telling),
    probe: probeOnPaper(controlPoint, one.entry.probe, say),
    instrument: one.entry.instrument?.name,
    deviation: numberOf(one.entry.deviationId),
    amendments: amendmentsOf(one, fields),
    ...clarified(one.entry.clarifications),
  }));
}

type Entry = Pick<Reading, 'made' | 'flags'> & { judged: Judged[] };

function signedOf({ made, flags, judged }: Entry, { say, tell }: Telling) {
  return {
    by: made.name,
    at: Date.parse(made.at),
    receivedAt: isTwoTimes({ at: Date.parse(made.at), enteredAt: Date.parse(made.recordedAt) }) ? Date.parse(made.recordedAt) : undefined,
    flags: flagsOnPaper(flags, say),
    verdict: toldWorst(judged, tell),
  };
}

function valueOf({ entered }: Reading, { say }: Telling): Pick<ReadingData, 'value' | 'unit' | 'note'> {
  if (!('answer' in entered)) return { value: String(entered.value), unit: entered.unit };
  const { answer, humidity } = entered;
  const note = [sayAnswered(entered, say), humidity && sayHumidFrom(humidity, say)].filter(Boolean).join('; ') || undefined;
  return { value: say(answer ? 'yes' : 'no'), unit: '', note };
}

function sayEntered(reading: Reading, telling: Telling): string {
  const { value, unit, note } = valueOf(reading, telling);
  return [formatRead({ value, unit }), note].filter(Boolean).join(' ');
}
