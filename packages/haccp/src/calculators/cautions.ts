import { coded } from '../limits/coded';

export const cautions = {
  curing: coded('caution-curing'),
  limits: coded('caution-limits'),
  model: coded('caution-model'),
} as const;
