import { sayLimit } from './say-limit';
import type { Tell } from './told';

/** Tells a verdict by its codes, for tests of what is said around it. Words of its own are kept. */
export const plainTell: Tell = (verdict, limit) => {
  const { kind, finding, margin, notes, probe, spare } = verdict;
  return {
    ...{ kind, probe, spare },
    measured: verdict.measured ?? `${finding}.measured`,
    limit: verdict.limit ?? (limit ? sayLimit(limit) : ''),
    margin: finding ? `${finding}.margin` : margin,
    because: verdict.because ?? `${finding}.because`,
    next: verdict.next,
    notes: notes.map((note) => (typeof note === 'string' ? note : note.code)),
    source: verdict.source ?? limit?.source ?? { citation: '', edition: '', confirmed: false },
  };
};
