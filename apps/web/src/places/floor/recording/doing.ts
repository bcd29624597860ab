import type { SheetLine } from '../sheet/sheet-line';

/** What a person is about to record on a lot; opens its dialog. */
export type Doing =
  | { what: 'put in meat' }
  | { what: 'weigh'; itemId?: string }
  | { what: 'record' | 'finish'; controlPointId: string }
  | { what: 'pack' }
  | { what: 'take out' }
  | { what: 'report'; controlPointId?: string }
  | { what: 'correct'; line: SheetLine };
