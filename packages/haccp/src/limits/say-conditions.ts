import { isOfFormulation, sayLimitCondition, type LimitCondition } from './limit-condition';

/**
 * What a limit asks for besides its figure, in sentences: what every lot is judged by, then what adopting the plan
 * affirms. Empty where it is for anything.
 */
export function sayConditions(conditions: readonly LimitCondition[] = []): string[] {
  const judged = conditions.filter(isOfFormulation).map(sayLimitCondition);
  const affirmed = conditions.filter((condition) => !isOfFormulation(condition)).map(sayLimitCondition);
  return [
    ...(judged.length === 0 ? [] : [`Only with ${judged.join(', and ')}: judged from what goes into every lot.`]),
    ...affirmed.map((says) => `Adopting the plan affirms: ${says}`),
  ];
}
