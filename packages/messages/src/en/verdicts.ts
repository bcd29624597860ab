import { beforeWeighing } from './verdicts/before-weighing';
import { cooling } from './verdicts/cooling';
import { dwell } from './verdicts/dwell';
import { series } from './verdicts/series';

/** What became of a limit. A code is `<finding>.<measured|margin|because|next>`, or that of a note. */
export const verdicts = { ...series, ...dwell, ...cooling, ...beforeWeighing };
