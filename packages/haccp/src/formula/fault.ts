/**
 * Why nothing could be worked out: one sentence with the figure that cannot be used. Never an exception, never zero.
 */
export type Fault = { fault: string };

/** What was worked out, or why it was not. */
export type Worked<Result> = Result | Fault;

export const isFault = (worked: object): worked is Fault => 'fault' in worked;
