import type { LinePart, Told } from '@larderbook/haccp';
import { writeNumber } from '../figures/write-number';
import { writeSpan } from '../figures/write-span';
import type { LimitTeller } from '../limits/limit-teller';
import { write, type Words } from '../say';
import { localeOf, type Voice } from '../voice';
import { spoken, type Spoken } from './spoken';
import type { Teller } from './tell';

/** Some lines quote the verdict that they are told with. */
export type SayLine = (linePart: LinePart, verdict?: Told) => string;

/** Times of the day of `today` need no day. */
type ToldWith = Pick<Teller, 'tellRemark'> & Pick<LimitTeller, 'sayLimit'> & { today?: number };

/**
 * A code without words here is told as a note of a verdict. @param words of several places: no code is in two of them
 */
export function lines(words: Words, voice: Voice, { tellRemark, sayLimit, today }: ToldWith): SayLine {
  const told = spoken(words, voice, today);
  const locale = localeOf(voice);
  const line: SayLine = (part, verdict) => {
    if (typeof part === 'string') return part;
    if (typeof part === 'number') return writeNumber(String(part), locale);
    if ('code' in part) return told(part.code, part.figures) ?? tellRemark(part);
    if ('sum' in part) return part.sum.map((term) => line(term, verdict)).join('');
    if ('limit' in part) return sayLimit(part.limit, part.unit);
    if ('verdict' in part) return verdict ? byVerdict[part.verdict](verdict, told) : '';
    if ('at' in part) return write({ ...part, today }, voice);
    return 'to' in part ? writeSpan(part, locale) : write(part, voice);
  };
  return line;
}

const byVerdict = {
  measured: ({ measured }: Told) => measured,
  limit: ({ limit }: Told) => limit,
  because: ({ because }: Told) => because,
  'margin and because': ({ margin, because }: Told) => [margin, because].filter(Boolean).join('. '),
  'kind and margin': ({ kind, margin }: Told, told: Spoken) => [told(`judged-${kind}`), margin].filter(Boolean).join(', '),
} as const;
