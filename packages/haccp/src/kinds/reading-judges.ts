import type { CriticalLimit, ReadingLimit } from '../limits/limit';
import { judgeAnswer } from './attestation/judge-answer';
import { judgeFigureRead } from './figure/judge-figure-read';
import type { ReadingJudge } from './judge';
import type { LimitOf } from './kind';
import { judgeRange } from './range/judge-range';
import { readFor } from './range/read-for';

const judges = {
  range: ({ read }, limit, { errors }) => judgeRange(readFor(read, limit), limit, errors),
  figure: ({ read }, limit, { errors }) => judgeFigureRead(read, limit, errors),
  attestation: ({ answer }, limit, { cook }) => judgeAnswer(answer, limit, cook),
} satisfies { [K in ReadingLimit['kind']]: ReadingJudge<LimitOf<K>> };

export const readingJudgeOf = ({ kind }: ReadingLimit): ReadingJudge<ReadingLimit> => judges[kind] as unknown as ReadingJudge<ReadingLimit>;

export const isReadingLimit = (limit: CriticalLimit): limit is ReadingLimit => limit.kind in judges;
