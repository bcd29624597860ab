/** The entry that a new one corrects: its id, when it was taken, and why it is corrected. */
export type Amending = { id: string; takenAt: string; reason: string };

/** What the body of a correction carries besides its values. */
export const amendsOf = (amending: Amending | undefined) => (amending ? { amends: amending.id, reason: amending.reason } : {});
