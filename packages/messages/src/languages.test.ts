import { expect, it } from 'vitest';
import { languageFor } from './languages';

it('takes the first wish that is one of ours, and English where none is', () => {
  expect(languageFor(['es-MX', 'en;q=0.8'])).toBe('es');
  expect(languageFor(['fr', 'es;q=0.5'])).toBe('es');
  expect(languageFor(['EN_us'])).toBe('en');
  expect([languageFor(['fr']), languageFor([])]).toEqual(['en', 'en']);
});
