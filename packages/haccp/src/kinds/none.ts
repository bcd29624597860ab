/** For a kind without what is asked for. */
export const none = (): never[] => [];
