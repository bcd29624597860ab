/** Epoch ms: `at` by a person or device, `enteredAt` by the server's clock. */
export type Stated = { at: number; enteredAt: number };

/** Clocks that agree to the minute tell one time; of two times neither is told alone. */
const ONE_TIME_MS = 60_000;

export const isTwoTimes = ({ at, enteredAt }: Stated): boolean => Math.abs(enteredAt - at) > ONE_TIME_MS;
