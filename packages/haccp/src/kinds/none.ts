/** What a kind of limit answers that has none of what is asked for. */
export const none = (): never[] => [];
