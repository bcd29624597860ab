import type { Quantity } from '@larderbook/haccp';

/**
 * An instant (ISO 8601 or epoch ms), said by the clock of the shop: its day and time, or one of them. With `today`, a
 * moment of the day that needs no naming, its time alone while it lies in that day.
 */
export type Instant = { at: number | string; show?: 'day' | 'time'; today?: number };

/** A day of the calendar ("2026-11-29"): the same in every zone. */
export type CalendarDay = { day: string };

/** One of several names: "kg, g, or lb". */
export type AnyOf = { anyOf: readonly string[] };

/**
 * What stands in a sentence at `{name}`: words that a person typed, several of them, the number of a
 * version, or a figure written as the reader's language does.
 */
export type Value = string | number | readonly string[] | Quantity | Instant | CalendarDay | AnyOf;
