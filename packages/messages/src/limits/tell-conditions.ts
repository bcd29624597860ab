import { isOfFormulation, isSaid, type Condition, type LimitCondition, type Source } from '@larderbook/haccp';
import { codeOf } from '../code-of';
import type { LimitVoice, SayLimits } from './limit-voice';
import { figureOf } from './tell-bounds';

/** "at least 100 ppm ingoing sodium nitrite on the meat block", "for: Cooked sausage; Jerky" */
export function tellCondition(condition: Condition, { say, name }: LimitVoice): string {
  switch (condition.kind) {
    case 'product':
      return say('for-products', { products: condition.among.map((each) => say(codeOf('class', each))).join('; ') });
    case 'place':
      return say('in-places', { places: condition.among.map(name).join(', ') });
    case 'nitrite':
      return say(codeOf('asks-nitrite-on', condition.per), { least: figureOf(condition.least, 3, 'ppm') });
    case 'accelerator':
      return say(codeOf('asks-accelerator-on', condition.per), { least: figureOf(condition.least, 3, 'ppm') });
    case 'salt in water phase':
      return say('asks-salt-in-water-phase', { least: figureOf(condition.least, 3, '%'), formula: condition.formula });
    case 'statement':
    case 'support':
      return name(condition.says);
  }
}

/** Lots are judged by some conditions; adopting the plan affirms others, and the plan supports the rest. */
export function tellConditions(conditions: readonly LimitCondition[], voice: LimitVoice): string[] {
  const { say, name } = voice;
  const judged = conditions.filter(isOfFormulation).map((condition) => tellCondition(condition, voice));
  const says = (kind: 'statement' | 'support') =>
    conditions.flatMap((condition) => (condition.kind === kind ? [name(condition.says)] : []));
  return [
    ...(judged.length === 0 ? [] : [say('judged-with', { asked: judged.reduce((one, other) => say('asked-and', { one, other })) })]),
    ...says('statement').map((statement) => say('adopting-affirms', { statement })),
    ...says('support').map((asked) => say('plan-supports', { asked })),
  ];
}

/** One sentence each. */
export function tellSupport({ support: { read, gap, own } = {} }: Source, say: SayLimits): string[] {
  return [
    ...(isSaid(read) ? [say('support-read', { words: read.trim() })] : []),
    ...(isSaid(gap) ? [say('support-gap', { words: gap.trim() })] : []),
    ...(isSaid(own) ? [say('support-own', { words: own.trim() })] : []),
  ];
}
