/** The entry that a new one corrects. */
export type Amending = { id: string; takenAt: string; reason: string };

export const amendsOf = (amending: Amending | undefined) => (amending ? { amends: amending.id, reason: amending.reason } : {});
