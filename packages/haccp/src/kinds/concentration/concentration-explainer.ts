import { cautions } from '../../calculators/cautions';
import { explainByVerdict } from '../../explain/explain-by-verdict';
import type { Explainer } from '../explainer';
import { undrawn } from '../undrawn';
import type { ConcentrationLimit } from './concentration-limit';
import { explainConcentration } from './explain-concentration';

export const concentrationExplainer: Explainer<ConcentrationLimit> = {
  ...undrawn,
  cautions: [cautions.curing, cautions.limits],
  explain(limit, verdict, { weighed }) {
    if (!weighed) return explainByVerdict;
    const { brought, meat, meatBlock } = weighed(limit.substance);
    return explainConcentration(limit, verdict, brought, meat, meatBlock);
  },
};
