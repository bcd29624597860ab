/** A usable number of log10, in whole hundredths. */
export const isLogs = (hundredths: number): boolean => Number.isSafeInteger(hundredths) && hundredths > 0;
