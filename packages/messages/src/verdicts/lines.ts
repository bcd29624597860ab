import type { LinePart, Told } from '@larderbook/haccp';
import { writeNumber } from '../figures/write-number';
import { writeSpan } from '../figures/write-span';
import type { LimitTeller } from '../limits/limit-teller';
import { write, type Words } from '../say';
import { localeOf, type Voice } from '../voice';
import { spoken } from './spoken';
import type { Teller } from './tell';

/** Says what stands in a line of a working, where it is asked for beside the verdict that it is told with. */
export type SayLine = (linePart: LinePart, verdict?: Told) => string;

/**
 * The lines of workings in one voice. A code that has no words here is told as a note of a verdict.
 * @param places the words of several places: no code is in two of them
 */
export function lines(
  places: readonly Words[],
  voice: Voice,
  { tellRemark, sayLimit }: Pick<Teller, 'tellRemark'> & Pick<LimitTeller, 'sayLimit'>,
): SayLine {
  const told = spoken(Object.assign({}, ...places) as Words, voice);
  const locale = localeOf(voice);
  const line: SayLine = (linePart, verdict) => {
    if (typeof linePart === 'string') return linePart;
    if (typeof linePart === 'number') return writeNumber(String(linePart), locale);
    if ('code' in linePart) return told(linePart.code, linePart.figures) ?? tellRemark(linePart);
    if ('sum' in linePart) return linePart.sum.map((term) => line(term)).join('');
    if ('limit' in linePart) return sayLimit(linePart.limit, linePart.unit);
    if ('verdict' in linePart) return verdict ? byVerdict[linePart.verdict](verdict) : '';
    return 'to' in linePart ? writeSpan(linePart, locale) : write(linePart, voice);
  };
  return line;
}

const byVerdict = {
  measured: ({ measured }: Told) => measured,
  limit: ({ limit }: Told) => limit,
  because: ({ because }: Told) => because,
  'margin and because': ({ margin, because }: Told) => [margin, because].filter(Boolean).join('. '),
} as const;
