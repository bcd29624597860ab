import type { Quantity } from '@larderbook/haccp';

/** ISO 8601 or epoch ms, told by the clock of the shop. An instant in the day of `today` is told by its time alone. */
export type Instant = { at: number | string; show?: 'day' | 'time'; today?: number };

/** "2026-11-29", the same in every zone. */
export type CalendarDay = { day: string };

/** "kg, g, or lb" */
export type AnyOf = { anyOf: readonly string[] };

/** The value of `{name}`. Text is what a person typed, or the number of a version. */
export type Value = string | number | readonly string[] | Quantity | Instant | CalendarDay | AnyOf;
