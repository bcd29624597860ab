import fc from 'fast-check';
import { expect, test } from 'vitest';
import { setAside, type ProductEvent, type SetAside } from './set-aside';

const event =
  (kind: ProductEvent['kind']) =>
  (mass: bigint): ProductEvent => ({ kind, mass });
const [packed, shipped, condemned, toRework, reworked] = [
  event('packed'),
  event('shipped'),
  event('condemned'),
  event('to-rework'),
  event('reworked'),
];
const none: SetAside = { condemned: 0n, toRework: 0n, opened: 0n, pending: 0n };

test.each<[string, ProductEvent[], Partial<SetAside>]>([
  ['nothing was condemned', [packed(40n), shipped(10n)], {}],
  ['raw meat was condemned before anything was packed', [condemned(5n), packed(40n)], {}],
  ['the whole lot was condemned in its packages', [packed(40n), condemned(40n)], { condemned: 40n }],
  ['more was condemned than was in packages: the rest was not packed', [packed(40n), condemned(50n)], { condemned: 40n }],
  ['what had left by then cannot be charged', [packed(40n), shipped(30n), condemned(40n)], { condemned: 10n }],
  ['what is packed afterwards is not charged', [packed(10n), condemned(30n), packed(20n)], { condemned: 10n }],
  ['condemned twice, each time what was there', [packed(10n), condemned(4n), condemned(9n)], { condemned: 10n }],
  ['packages to be reworked wait to be taken', [packed(40n), toRework(10n)], { toRework: 10n, pending: 10n }],
  ['they are opened when they are taken', [packed(40n), toRework(10n), reworked(6n)], { toRework: 4n, opened: 6n, pending: 4n }],
  ['loose product to be reworked is in no package', [toRework(10n), packed(30n)], { pending: 10n }],
  ['and none of them is opened for it', [toRework(10n), packed(30n), reworked(10n)], {}],
  ['rework that nobody decided opens nothing', [packed(30n), reworked(10n)], {}],
  ['what is condemned cannot also be reworked', [packed(10n), condemned(8n), toRework(8n)], { condemned: 8n, toRework: 2n, pending: 8n }],
])('%s', (_case, events, aside) => {
  expect(setAside(events)).toEqual({ ...none, ...aside });
});

test('no package is set aside twice, and none that has left', () => {
  const events = fc.array(
    fc.record({
      kind: fc.constantFrom('packed', 'shipped', 'condemned', 'to-rework', 'reworked'),
      mass: fc.bigInt({ min: 0n, max: 100n }),
    }),
    { maxLength: 20 },
  );
  fc.assert(
    fc.property(events, (happened) => {
      const aside = setAside(happened);
      const total = happened.reduce((sum, { kind, mass }) => (kind === 'packed' ? sum + mass : sum), 0n);
      expect(aside.condemned + aside.toRework + aside.opened <= total).toBe(true);
      expect(Object.values(aside).every((mass) => mass >= 0n)).toBe(true);
      expect(aside.toRework <= aside.pending).toBe(true);
    }),
    { numRuns: 2000 },
  );
});
