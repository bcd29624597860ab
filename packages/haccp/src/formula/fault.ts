/**
 * Why nothing could be worked out: one sentence with the figure that cannot be used. Never an exception, never zero.
 */
export type Fault = { fault: string };

/** What comes of it, or why nothing does. */
export type OrFault<Result> = Result | Fault;

export const isFault = (result: object): result is Fault => 'fault' in result;
