import { isOfFormulation, sayLimitCondition, type LimitCondition } from './limit-condition';

/**
 * What a limit asks for besides its figure, in sentences: what every lot is judged by, what adopting the plan affirms,
 * and what the plan has to support. Empty where it is for anything.
 */
export function sayConditions(conditions: readonly LimitCondition[] = []): string[] {
  const judged = conditions.filter(isOfFormulation).map(sayLimitCondition);
  const says = (kind: 'statement' | 'support') => conditions.filter((condition) => condition.kind === kind).map(sayLimitCondition);
  return [
    ...(judged.length === 0 ? [] : [`Only with ${judged.join(', and ')}: judged from what goes into every lot.`]),
    ...says('statement').map((affirmed) => `Adopting the plan affirms: ${affirmed}`),
    ...says('support').map((asked) => `The plan says what supports it: ${asked}`),
  ];
}
