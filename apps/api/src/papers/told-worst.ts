import type { Judged } from '@larderbook/contracts';
import { worstVerdict, type Tell, type Told } from '@larderbook/haccp';

/** Tells the governing verdict; undefined where nothing was judged. */
export function toldWorst(judged: readonly Judged[], tell: Tell): Told | undefined {
  if (judged.length === 0) return undefined;
  const worst = worstVerdict(judged.map(({ verdict }) => verdict));
  return tell(worst, judged.find(({ verdict }) => verdict === worst)?.limit);
}
