import { describe, expect, test } from 'vitest';
import { establishmentFields } from './shop';

const read = (timeZone: string) => establishmentFields.shape.timeZone.safeParse(timeZone);

describe('a time zone', () => {
  test.each(['UTC', 'America/Chicago', 'America/Argentina/Buenos_Aires', 'America/Port-au-Prince', 'Asia/Kolkata'])(
    '%s is a region',
    (zone) => expect(read(zone).data).toBe(zone),
  );

  test.each(['+05:30', '-06', 'UTC+2', 'GMT-3', 'Etc/GMT+5', 'EST5EDT', 'Z', 'Wrenfold/Quarry', 'america/chicago', ''])(
    '“%s” is refused with what to choose',
    (zone) => {
      const [issue] = read(zone).error?.issues ?? [];
      expect(issue?.message).toBe('zone-by-region');
    },
  );

  test('may be any that the list offers', () => {
    expect(Intl.supportedValuesOf('timeZone').filter((zone) => !read(zone).success)).toEqual([]);
  });
});
