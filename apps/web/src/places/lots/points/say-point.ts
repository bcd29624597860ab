import type { ControlPointOnLot } from '@larderbook/contracts';
import type { Tell } from '@larderbook/haccp';
import type { SayOf } from '@larderbook/messages';
import { timeLeft, writeTimeLeft } from '../../../ui/time-left';
import { firstDeadline, isRunning } from '../next/next-thing';

/** How a control point stands: its shape, and the word or two beside it. */
export type SaidPoint = { state: 'met' | 'missed' | 'undetermined' | 'running' | 'not-started'; words: string };

const isWarning = ({ forecast }: ControlPointOnLot): boolean => forecast?.state === 'at risk' || forecast?.state === 'will miss';

export function sayPoint(point: ControlPointOnLot, now: number, say: SayOf<'shared'>, tell: Tell): SaidPoint {
  const { stands, settled, judged } = point;
  const deadline = firstDeadline(point);
  if (stands === 'not-started') return { state: stands, words: 'not started' };
  if (stands === 'running') {
    const words = deadline === undefined ? 'running' : writeTimeLeft(timeLeft(deadline, now), say);
    return { state: stands, words: isWarning(point) ? `${words}, ${point.forecast?.state}` : words };
  }
  const isSettled = settled && stands !== 'met' ? ', dealt with' : '';
  if (stands === 'undetermined') return { state: stands, words: `undetermined${isSettled}` };
  const margin = judged.flatMap(({ verdict, limit }) => (verdict.kind === stands && tell(verdict, limit).margin) || [])[0];
  const isStillCooling = judged.some(({ verdict }) => verdict.kind === 'missed' && verdict.still);
  const isOpen = isStillCooling ? ', still cooling' : isRunning(point) ? ', not finished' : '';
  return { state: stands, words: `${stands}${margin ? `, ${margin}` : ''}${isOpen}${isSettled}` };
}
