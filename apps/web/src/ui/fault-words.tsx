import { readFault } from '@larderbook/contracts';
import type { Say, WordsOf } from '@larderbook/messages';
import { useSay } from './voice';

/** A fault of the contract in the reader's language, or a sentence as it is. */
export function FaultWords({ said }: { said: string }) {
  return readFault(said) ? <Fault said={said} /> : said;
}

function Fault({ said }: { said: string }) {
  return sayFault(said, useSay('faults'));
}

/** Text, for where several faults are said in one. */
export function sayFault(said: string, say: Say<WordsOf<'faults'>>): string {
  const fault = readFault(said);
  return fault ? (say as (code: string, figures?: object) => string)(fault.code, fault.figures) : said;
}
