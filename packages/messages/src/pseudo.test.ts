import { describe, expect, it } from 'vitest';
import { pseudo } from './pseudo';
import { say } from './say';

const words = {
  held: '{count, plural, one {# lot is on hold.} other {# lots are on hold.}}',
  by: 'Signed by {who} in the office.',
} as const;

describe('the language nobody speaks', () => {
  const inPseudo = say(pseudo(words), { language: 'en', timeZone: 'UTC', timeStyle: 'US' });

  it('keeps the figures and the plurals, and brackets what was translated', () => {
    expect(inPseudo('by', { who: 'Ada Quill' })).toBe('‹Síígnééd by Ada Quill íín théé óóffíícéé.›');
    expect(inPseudo('held', { count: 1 })).toBe('‹1 lóót íís óón hóóld.›');
  });

  it('is about as much longer as German is', () => {
    const longer = inPseudo('by', { who: '' }).length / 'Signed by  in the office.'.length;
    expect(longer).toBeGreaterThan(1.3);
  });
});
