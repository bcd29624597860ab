import type { Lot } from '@larderbook/contracts';
import { canonicalJson } from '@larderbook/haccp';
import type { Correction, SheetLine } from './sheet-line';
import type { SheetVoice } from './sheet-voice';

type Said = Lot['corrections'][number];

/**
 * Corrections stand on the line that counts now; what was voided, and what a delivery was before, stand on lines of
 * their own when they were entered.
 */
export function hangCorrections<L extends SheetLine>(lines: readonly L[], lot: Lot, voice: SheetVoice): (L | SheetLine)[] {
  const on = new Map(lines.map((line) => [line.id.split(' ')[0] ?? line.id, line]));
  const stageEnds = new Map(lot.controlPoints.map(({ stageEnd, controlPoint }) => [stageEnd?.stageEndId, controlPoint.controlPointId]));
  const lineOf = ({ id, about, voided }: Said) =>
    voided || about === 'receipt' ? undefined : (on.get(id) ?? on.get(stageEnds.get(id) ?? ''));
  const hung = lines.map((line) => {
    const own = lot.corrections.filter((said) => lineOf(said) === line);
    return own.length > 0 ? { ...line, corrects: [...line.corrects, ...own.flatMap((said) => correctionsOf(said, voice))] } : line;
  });
  return [...hung, ...lot.corrections.filter((said) => !lineOf(said)).map((said) => aloneOf(said, voice))];
}

const correctionsOf = ({ correctionId, changes, made, reason }: Said, { say, tellSaid }: SheetVoice): Correction[] =>
  changes.map(({ what, before }) => {
    const isMoment = typeof before === 'object' && 'at' in before;
    return {
      id: `${correctionId} ${canonicalJson(what)}`,
      what: tellSaid(what),
      value: isMoment ? '' : before === undefined ? say('nothing') : tellSaid(before),
      moment: isMoment ? new Date(before.at).toISOString() : undefined,
      who: made.name,
      at: Date.parse(made.recordedAt),
      reason: tellSaid(reason),
    };
  });

const aloneOf = (said: Said, voice: SheetVoice): SheetLine => ({
  id: said.correctionId,
  kind: 'correction',
  at: Date.parse(said.made.recordedAt),
  what: voice.say(said.voided ? 'what-voided' : 'what-corrected', { what: voice.tellSaid(said.what) }),
  who: said.made.name,
  notes: [],
  flags: [],
  judged: [],
  controlPointId: said.controlPointId,
  corrects: correctionsOf(said, voice),
});
