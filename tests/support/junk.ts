import { v7 } from 'uuid';

/** What a broken or hostile client puts where something sensible belongs; some of it is still allowed somewhere. */
const nested = Array.from({ length: 40 }).reduce<unknown>((inner) => [inner], 'deep');
const long = [120, 5_000].map((length) => 'x'.repeat(length));
const texts = ['', ' ', ...long, "'; DROP TABLE lot; --", '%_\\', '\u202E🐖\u2028', '__proto__'];
const unkeepable = ['\u0000', 'NUL \u0000 inside', '\uD800'];
const ids = [v7(), v7().toUpperCase(), '00000000-0000-0000-0000-000000000000', 'ffffffff-ffff-ffff-ffff-ffffffffffff'];
const days = ['2000-01-01', '2199-12-31', '2026-02-30', '0000-01-01', '-271821-04-20'];
const instants = ['2000-01-01T00:00:00Z', '2199-12-31T23:59:59.999999+23:59', '2026-03-02T24:00:00Z'];
const numbers = [0, -0, -1, 0.001, 1e-7, 999_999, 2 ** 31, 2 ** 53, 1e21, Number.MAX_VALUE];
const others = [undefined, null, true, [], {}, [null], { length: -1 }, nested];
export const junk: readonly unknown[] = [...texts, ...unkeepable, ...ids, ...days, ...instants, ...numbers, ...others];

type Place = (string | number)[];

/**
 * Copies of an input with junk in one place each, about `most` of them: a small input gets nearly all junk everywhere,
 * in a large one the places take turns.
 */
export function* withJunk(input: object, most: number): Generator<{ place: string; input: object }> {
  const places = placesIn(input);
  const each = Math.min(junk.length, Math.ceil(most / places.length));
  for (const [turn, place] of places.entries()) {
    for (let next = 0; next < each; next += 1) {
      const bad = junk[(turn * 7 + next) % junk.length];
      yield { place: `${place.join('.')} = ${JSON.stringify(bad)?.slice(0, 60)}`, input: replaced(input, place, bad) };
    }
  }
}

/** Every value of an input, branches as well as leaves. */
function placesIn(value: unknown, place: Place = []): Place[] {
  const here = place.length > 0 ? [place] : [];
  if (typeof value !== 'object' || value === null) return here;
  const keys = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return [...here, ...keys.flatMap((key) => placesIn(at(value, key), [...place, key]))];
}

function replaced(input: object, place: Place, bad: unknown): object {
  const copy = structuredClone(input);
  const last = place.at(-1) ?? '';
  const holder = place.slice(0, -1).reduce<unknown>(at, copy);
  Object.assign(holder as object, { [last]: bad });
  return copy;
}

const at = (holder: unknown, key: string | number): unknown => (holder as Record<string | number, unknown>)[key];
