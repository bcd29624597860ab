import type { LotCodeFault } from '@larderbook/haccp';

/** Why a pattern of lot codes, or what it is filled with, gives no code. */
export const lotCodeFaults = {
  'lot-code-character': '“{character}” cannot stand in a lot code; use A to Z, 0 to 9 and -.',
  'lot-code-too-long': '{lot} has {length, number} characters; a lot code has at most {most, number}.',
  'no-day-of-the-calendar': '“{date}” is not a day of the calendar.',
  'no-number-of-a-lot': '{number} is not the number of a lot; they count from 1.',
  'number-not-apart': "Set '{n}' apart with - or a letter, so that no two lots can get the same code.",
  'pattern-needs-day': "The pattern needs the year and the day, such as '{YY}{DDD}', so that no code comes twice.",
  'pattern-needs-number': "The pattern needs '{n}', so that two lots of a day differ.",
  'placeholder-unknown': '{placeholder} is not known; use {known}.',
  'product-code-missing': 'The pattern asks for a product code and there is none.',
} as const satisfies Record<LotCodeFault['code'], string>;
