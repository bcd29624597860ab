import type { Told } from '../limits/told';
import type { WorkedOut } from './explanation';

/** What the verdict itself says, for a kind of limit that has no working of its own. */
export const explainByVerdict = ({ limit, measured, because }: Told): WorkedOut => ({
  steps: [{ what: 'Against the limit', rule: limit, putIn: measured, gives: because }],
  restsOn: [],
  assumptions: [],
});
