import { durationParts } from './duration';

/** "1 h 30 min", as a test reads it. */
export const formatDuration = (milliseconds: number): string =>
  durationParts(milliseconds)
    .map(({ count, unit }) => `${count} ${unit}`)
    .join(' ');
