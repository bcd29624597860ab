import type { CriticalLimit, Verdict } from '@larderbook/haccp';

/** A verdict with the limit it is on. */
export type VerdictOn = Verdict & { on: CriticalLimit };
