import { expect, test } from 'vitest';
import { fileName } from './file-name';

test.each([
  [
    'a product, a lot and what it is',
    ['Kiln Lane smoked sausage', 'SMS-26324-1', 'lot record'],
    'Kiln-Lane-smoked-sausage-SMS-26324-1-lot-record',
  ],
  ['accents', ['Jambon fumé à l’ancienne', 'plan 2'], 'Jambon-fume-a-lancienne-plan-2'],
  ['slashes and what a shell reads', ['../etc/passwd; rm "x"', 'log'], 'etc-passwd-rm-x-log'],
  ['another script: the code alone', ['Колбаса', 'LOT-1'], 'LOT-1'],
  ['nothing that can be kept', ['肉', '…'], 'paper'],
  ['a line break would end the header', ['Ring\r\nX-Bad: 1', '7'], 'Ring-X-Bad-1-7'],
  ['a name without end', ['a'.repeat(300)], 'a'.repeat(120)],
])('%s', (_case, parts, name) => {
  expect(fileName(parts)).toBe(name);
});
