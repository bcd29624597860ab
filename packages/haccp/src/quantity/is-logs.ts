/** In hundredths of log10. */
export const isLogs = (hundredths: number): boolean => Number.isSafeInteger(hundredths) && hundredths > 0;
