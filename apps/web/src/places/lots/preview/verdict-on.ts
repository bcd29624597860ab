import type { CriticalLimit, Verdict } from '@larderbook/haccp';

export type VerdictOn = Verdict & { on: CriticalLimit };
