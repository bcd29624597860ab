import type { Quantity } from '@larderbook/haccp';

/** An instant (epoch ms), said by the clock of the shop. */
export type Instant = { at: number };

/** A day of the calendar ("2026-11-29"): the same in every zone. */
export type CalendarDay = { day: string };

/** What stands in a sentence at `{name}`: words that a person typed, or a figure written as the reader's language does. */
export type Value = string | Quantity | Instant | CalendarDay;
