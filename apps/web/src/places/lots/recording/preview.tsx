import { RANK } from '@larderbook/haccp';
import { useTell } from '../../../ui/use-tell';
import { VerdictWords } from '../../../ui/verdict-words';
import type { VerdictOn } from '../preview/verdict-on';
import { useMargin } from './use-margin';

/** Shows the limit that governs; only the server's verdict counts. */
export function Preview({ verdicts }: { verdicts: VerdictOn[] }) {
  const marginAt = useMargin();
  const { tell } = useTell();
  const [governs] = [...verdicts].sort((a, b) => RANK[a.kind] - RANK[b.kind]);
  if (!governs) return null;
  const told = tell(governs, governs.on);
  return <VerdictWords verdict={{ ...told, because: told.next ?? told.because, next: undefined, margin: marginAt(told) }} />;
}
