import { sayLimit } from './say-limit';
import type { Tell } from './told';

/** Tells a verdict by its codes, for tests of what is said around it. */
export const plainTell: Tell = ({ kind, finding, notes, probe, spare }, limit) => ({
  ...{ kind, probe, spare },
  measured: `${finding}.measured`,
  limit: limit ? sayLimit(limit) : '',
  margin: `${finding}.margin`,
  because: `${finding}.because`,
  notes: notes.map(({ code }) => code),
  source: limit?.source ?? { citation: '', edition: '', confirmed: false },
});
