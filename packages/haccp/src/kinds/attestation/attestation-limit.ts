import type { Cited } from '../../limits/source';

/** Met when a person answers that the statement holds, and says what was seen. */
export type AttestationLimit = Cited & { kind: 'attestation'; statement: string; asks?: AskedFor };
/** What is recorded besides the answer: the moment itself, from which a clock starts, or how humid a cook was. */
export type AskedFor = 'moment' | 'humidity';
