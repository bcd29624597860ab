import type { Person } from './person';

/** The columns every record has: whose it is, who kept it and when. */
export const keptBy = ({ establishmentId, personId }: Person, at: Date) => ({
  establishmentId,
  recordedAt: at,
  recordedBy: personId,
});
