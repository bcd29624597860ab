import { coded } from '../limits/coded';

/** The usual cautions, said the same way wherever a figure of that kind is worked out. */
export const cautions = {
  curing: coded('caution-curing'),
  limits: coded('caution-limits'),
  model: coded('caution-model'),
} as const;
