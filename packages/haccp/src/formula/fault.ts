/** One sentence with the unusable figure. Never an exception, never zero. */
export type Fault = { fault: string };

export type OrFault<Result> = Result | Fault;

export const isFault = (result: object): result is Fault => 'fault' in result;
