import type { KnownMedium } from './find-medium';
import type { Coded } from '../limits/verdict';
import type { ExpectedState } from './expected';

/** Carried by every forecast: it helps a person act in time. No lot is accepted on it and no reading replaced by it. */
export const ADVICE = 'advice, never acceptance';

/** When a core will be at its target. Instants are epoch ms, estimated; undefined where it may never be. */
export type Forecast = { readonly use: typeof ADVICE; because: Coded[]; next: Coded[]; probe?: string } & (
  | { state: 'undetermined' | 'too early to tell' | 'reached' }
  | {
      state: ExpectedState;
      arrival: { best?: number; earliest?: number; latest?: number };
      medium: KnownMedium;
      takeMoreReadings: boolean;
      /** The fit began again here, because the medium changed. */
      restartedAt?: number;
    }
);
