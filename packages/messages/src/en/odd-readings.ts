import type { OddReadingCode } from '@larderbook/haccp';

/** Why a person is asked about a temperature of a series: on the keypad, and where it is sent. */
export const oddReadings = {
  'colder-than-around': '{read} is colder than what it lies in.',
  'far-from-course': '{read} is far from {last}, about {ago} before.',
  'falls-too-fast': '{read} falls faster than the core of the piece can: {last}, about {ago} before.',
  'rises-too-fast': '{read} rises faster than the core of the piece can: {last}, about {ago} before.',
} as const satisfies Record<OddReadingCode, string>;
