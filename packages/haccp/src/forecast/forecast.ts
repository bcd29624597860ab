import type { KnownMedium } from './find-medium';
import type { Coded } from '../limits/verdict';
import type { ExpectedState } from './expected';

/** Helps a person act in time: no lot is accepted on it, no reading replaced by it. */
export const ADVICE = 'advice, never acceptance';

/** Instants are estimates in epoch ms; undefined where it may never be. */
export type Forecast = { readonly use: typeof ADVICE; because: Coded[]; next: Coded[]; probe?: string } & (
  | { state: 'undetermined' | 'too early to tell' | 'reached' }
  | {
      state: ExpectedState;
      arrival: { best?: number; earliest?: number; latest?: number };
      medium: KnownMedium;
      takeMoreReadings: boolean;
      /** The fit began again here: the medium changed. */
      restartedAt?: number;
    }
);
