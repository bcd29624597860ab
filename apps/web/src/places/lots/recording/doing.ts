import type { ToClarify } from '../clarifying/to-clarify';
import type { SheetLine } from '../sheet/sheet-line';

/** The button that leads on to what comes next. */
export type Onward = { words: string; go: () => void };

export type Doing =
  | { what: 'put in meat' }
  | { what: 'weigh'; itemId?: string }
  | { what: 'record' | 'finish'; controlPointId: string }
  | { what: 'pack' }
  | { what: 'take out' }
  | { what: 'report'; controlPointId?: string }
  | { what: 'correct'; line: SheetLine }
  | ({ what: 'clarify' } & ToClarify);
