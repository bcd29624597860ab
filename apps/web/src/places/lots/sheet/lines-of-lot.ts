import type { Lot } from '@larderbook/contracts';
import { entriesOf } from './entries-of-lot';
import { hangCorrections } from './hang-corrections';
import { foldAmendments } from './fold-amendments';
import { lineKinds, type LineDeviation, type SheetLine } from './sheet-line';
import type { SheetVoice } from './sheet-voice';

export function linesOfLot(lot: Lot, voice: SheetVoice): SheetLine[] {
  const lines = hangDeviations(hangCorrections(foldAmendments(entriesOf(lot, voice)), lot, voice), lot, voice.say);
  return lines.sort((a, b) => a.at - b.at || lineKinds.indexOf(a.kind) - lineKinds.indexOf(b.kind));
}

/** A deviation that no line names stands on a line of its own. */
function hangDeviations(lines: (SheetLine & { deviationId?: string })[], lot: Lot, say: SheetVoice['say']): SheetLine[] {
  const left = new Map(lot.deviations.map((deviation) => [deviation.deviationId, deviation]));
  const hang = ({ deviationId, ...line }: SheetLine & { deviationId?: string }, id = deviationId): SheetLine => {
    const deviation = left.get(id ?? '');
    if (!deviation) return line;
    left.delete(deviation.deviationId);
    return { ...line, deviation: withPoint(deviation, lot, line) };
  };
  const named = lines.map((line) => hang(line));
  const hung = named.map((line) => (line.deviation || !isMissed(line) ? line : hang(line, pointOf(lot, line)?.openDeviationId)));
  return [...hung, ...[...left.values()].map((deviation) => aloneOf(deviation, lot, say))];
}

function aloneOf(deviation: Lot['deviations'][number], lot: Lot, say: SheetVoice['say']): SheetLine {
  const point = lot.controlPoints.find(({ openDeviationId }) => openDeviationId === deviation.deviationId);
  const line: SheetLine = {
    id: deviation.deviationId,
    kind: 'deviation',
    at: Date.parse(deviation.openedAt),
    what: say('deviation-opened', { number: String(deviation.number) }),
    notes: [],
    flags: [],
    judged: [],
    corrects: [],
    controlPointId: point?.controlPoint.controlPointId,
  };
  return { ...line, deviation: withPoint(deviation, lot, line) };
}

/** What a curve missed stands with its control point as a whole. */
function withPoint(deviation: Lot['deviations'][number], lot: Lot, line: SheetLine): LineDeviation {
  const point = pointOf(lot, line);
  const own = line.judged.filter(({ verdict }) => verdict.kind === 'missed');
  const whole = point?.judged.filter(({ verdict }) => verdict.kind === 'missed') ?? [];
  return { ...deviation, missed: own.length > 0 ? own : whole, correctiveAction: point?.controlPoint.correctiveAction };
}

const isMissed = ({ judged }: SheetLine): boolean => judged.some(({ verdict }) => verdict.kind === 'missed');
const pointOf = (lot: Lot, { controlPointId }: SheetLine) =>
  lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === controlPointId);
