/** When something happened, as a person or a device says, and when it was entered by the server's clock: epoch ms. */
export type Stated = { at: number; enteredAt: number };

/** Clocks that agree to the minute tell one time; what differs by more is never told by one of them alone. */
const ONE_TIME_MS = 60_000;

/** Whether the moment a record states and the moment it was entered are two. */
export const isTwoTimes = ({ at, enteredAt }: Stated): boolean => Math.abs(enteredAt - at) > ONE_TIME_MS;
