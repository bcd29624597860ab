import type { ClarificationWord } from '@larderbook/contracts';
import { TextArea } from '../../../ui/text-area';
import { Tiles } from '../../../ui/tiles';

const usual: Record<ClarificationWord, string[]> = {
  'not of the core': ['The probe was out of the product', 'The probe lay against metal', 'Read in another piece'],
  'time is right': ['Written down late, from paper', 'The clock of the tablet was wrong', 'Checked against the shop clock'],
  'as recorded': ['Said of the wrong reading', 'Found out otherwise'],
};

type ReasonOfWordProps = {
  word: ClarificationWord;
  value: string;
  onChange: (reason: string) => void;
  error?: string;
};

/** Why: a usual reason by one tap, which may be written on, or one in the person's own words. */
export function ReasonOfWord({ word, value, onChange, error }: ReasonOfWordProps) {
  return (
    <>
      <Tiles label="Usual reasons" tiles={usual[word].map((each) => ({ key: each, title: each, onTap: () => onChange(each) }))} />
      <TextArea label="Reason" maxLength={2000} value={value} onChange={onChange} error={error} />
    </>
  );
}
