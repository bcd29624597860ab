import type { Cited } from '../../limits/source';

/** Met when a person answers that the statement holds, and says what was seen. */
export type AttestationLimit = Cited & { kind: 'attestation'; statement: string; asks?: AskedFor };
/** Besides the answer: the moment, which starts a clock, or how humid a cook was. */
export type AskedFor = 'moment' | 'humidity';
