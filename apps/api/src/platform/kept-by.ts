import type { Person } from './person';

export const keptBy = ({ establishmentId, personId }: Person, at: Date) => ({
  establishmentId,
  recordedAt: at,
  recordedBy: personId,
});
