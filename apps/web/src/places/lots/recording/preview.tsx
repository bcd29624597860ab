import { RANK, type Verdict } from '@larderbook/haccp';
import { VerdictWords } from '../../../ui/verdict-words';
import { useMargin } from './use-margin';

/**
 * How what stands on the keypad would be judged: of several limits the one that governs, in as few words as help.
 * Only the server's verdict counts.
 */
export function Preview({ verdicts }: { verdicts: Verdict[] }) {
  const marginAt = useMargin();
  const [governs] = [...verdicts].sort((a, b) => RANK[a.kind] - RANK[b.kind]);
  if (!governs) return null;
  const words = { because: governs.next ?? governs.because, next: undefined, margin: marginAt(governs) };
  return <VerdictWords verdict={{ ...governs, ...words }} />;
}
