import type { SayOf } from '@larderbook/messages';
import { useEffect, useState } from 'react';
import { useSay } from './voice';

/** In whole seconds; once `late`, they count up. */
export type TimeLeft = { seconds: number; late: boolean };

/** From `now` to `deadline` (both epoch ms), rounded so that never more is left than there is. */
export function timeLeft(deadline: number, now: number): TimeLeft {
  const late = now > deadline;
  return { late, seconds: late ? Math.ceil((now - deadline) / 1000) : Math.floor((deadline - now) / 1000) };
}

/** "2 h 05 min left", "4 min over". */
export const writeTimeLeft = ({ seconds, late }: TimeLeft, say: SayOf<'shared'>): string =>
  say(late ? 'time-over' : 'time-left', { time: writeSeconds(seconds) });

/** "2 h 05 min", "14 min", "45 s": as precise as a person needs, in signs every language shares. */
export function writeSeconds(seconds: number): string {
  if (seconds < 60) return `${seconds} s`;
  const minutes = Math.floor(seconds / 60);
  if (minutes < 5 && seconds % 60 > 0) return `${minutes} min ${seconds % 60} s`;
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}

/** Epoch ms; ticks every `everyMs`, and at once when the screen comes back. */
export function useNow(everyMs = 1000): number {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const tick = () => setNow(Date.now());
    const timer = setInterval(tick, everyMs);
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', tick);
    };
  }, [everyMs]);
  return now;
}

/** `deadline` is epoch ms. */
export function useTimeLeft(deadline: number): TimeLeft & { words: string } {
  const say = useSay('shared');
  const left = timeLeft(deadline, useNow());
  return { ...left, words: writeTimeLeft(left, say) };
}
