import type { CurveJudge } from '../judge';
import type { BandTimeLimit } from './band-time-limit';
import { addToBandTimeSoFar, beginBandTime, copyOfBandTime, judgeBandTimeSoFar, type BandTimeSoFar } from './judge-band-time';

export const bandTimeJudge: CurveJudge<BandTimeLimit, BandTimeSoFar> = {
  begin: (limit, { error }) => beginBandTime(limit, error),
  add: addToBandTimeSoFar,
  judge: judgeBandTimeSoFar,
  copy: copyOfBandTime,
  awaited({ to }, own) {
    const { kind, running } = own.judged();
    return kind === 'undetermined' && running ? { target: to, way: 'heating', by: running.deadline } : undefined;
  },
};
