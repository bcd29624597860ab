import type { ControlPointOnLot } from '@larderbook/contracts';
import type { Tell } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import { timeLeft, writeTimeLeft } from '../../../ui/time-left';
import { firstDeadline, isRunning } from '../next/next-thing';
import { withWarning } from '../say/with-warning';

export type SaidPoint = { state: 'met' | 'missed' | 'undetermined' | 'running' | 'not-started'; words: string };

export function sayPoint(point: ControlPointOnLot, now: number, say: SayOf<'lots'>, sayShared: SayOf<'shared'>, tell: Tell): SaidPoint {
  const { stands, settled, judged } = point;
  const deadline = firstDeadline(point);
  if (stands === 'not-started') return { state: stands, words: say('not-started') };
  if (stands === 'running') {
    const left = deadline === undefined ? say('running') : writeTimeLeft(timeLeft(deadline, now), sayShared);
    return { state: stands, words: withWarning(left, point.forecast?.state, say) };
  }
  const isSettled = settled && stands !== 'met' && say('dealt-with');
  if (stands === 'undetermined') return { state: stands, words: listed(say('point-undetermined'), isSettled) };
  const margin = judged.flatMap(({ verdict, limit }) => (verdict.kind === stands && tell(verdict, limit).margin) || [])[0];
  const isStillCooling = judged.some(({ verdict }) => verdict.kind === 'missed' && verdict.still);
  const isOpen = isStillCooling ? say('still-cooling') : isRunning(point) && say('not-finished');
  return { state: stands, words: listed(say(`point-${stands}`), margin, isOpen, isSettled) };
}

/** A row of short words on a tile, no sentence. */
const listed = (...words: (string | false | undefined)[]): string => words.filter(Boolean).join(', ');
