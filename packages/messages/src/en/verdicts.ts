import { limitFaults } from './limit-faults';
import { answers } from './verdicts/answers';
import { beforeWeighing } from './verdicts/before-weighing';
import { cooling } from './verdicts/cooling';
import { dwell } from './verdicts/dwell';
import { formula } from './verdicts/formula';
import { heat } from './verdicts/heat';
import { ripening } from './verdicts/ripening';
import { series } from './verdicts/series';
import { values } from './verdicts/values';

/** What became of a limit. A code is `<finding>.<measured|margin|because|next>`, or that of a note. */
export const verdicts = {
  ...limitFaults,
  ...series,
  ...values,
  ...answers,
  ...formula,
  ...dwell,
  ...cooling,
  ...heat,
  ...ripening,
  ...beforeWeighing,
};
