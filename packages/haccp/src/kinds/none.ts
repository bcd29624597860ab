export const none = (): never[] => [];
