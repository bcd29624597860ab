import type { ClarificationWord } from '@larderbook/contracts';
import { TextArea } from '../../../ui/text-area';
import { Tiles } from '../../../ui/tiles';
import { useSay } from '../../../ui/voice';

const usual = {
  'not of the core': ['out-of-product', 'against-metal', 'another-piece'],
  'time is right': ['from-paper', 'tablet-clock', 'shop-clock'],
  'as recorded': ['wrong-reading', 'found-out-otherwise'],
} as const satisfies Record<ClarificationWord, readonly string[]>;

type ReasonOfWordProps = {
  word: ClarificationWord;
  value: string;
  onChange: (reason: string) => void;
  error?: string;
};

export function ReasonOfWord({ word, value, onChange, error }: ReasonOfWordProps) {
  const say = useSay('judging');
  return (
    <>
      <Tiles
        label={say('usual-reasons')}
        tiles={usual[word].map((code) => ({ key: code, title: say(code), onTap: () => onChange(say(code)) }))}
      />
      <TextArea label={say('reason')} maxLength={2000} value={value} onChange={onChange} error={error} />
    </>
  );
}
