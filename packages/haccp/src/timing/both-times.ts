/** When something happened, as a person or a device says, and when it was entered by the server's clock: epoch ms. */
export type Stated = { at: number; enteredAt: number };

/** Clocks that agree to the minute tell one time; what differs by more is never told by one of them alone. */
const ONE_TIME_MS = 60_000;

/** Whether the moment a record states and the moment it was entered are two. */
export const isTwoTimes = ({ at, enteredAt }: Stated): boolean => Math.abs(enteredAt - at) > ONE_TIME_MS;

/** "09:00, entered 11:12"; one time where both are the same to the minute. Everything that is dated is said like this. */
export const sayBothTimes = (stated: Stated, say: (at: number) => string): string =>
  isTwoTimes(stated) ? `${say(stated.at)}, entered ${say(stated.enteredAt)}` : say(stated.at);
