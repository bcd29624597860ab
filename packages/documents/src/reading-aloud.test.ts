import { describe, expect, test } from 'vitest';
import { lotRecord } from './lot-record';
import { readBack } from './read-back.test-data';
import { aLotRecord } from './lot-record.test-data';

/** Printed once for all that only read it. */
const whole = readBack(lotRecord(aLotRecord()));

describe('for a reader that speaks', () => {
  test('every page has headings, tables of rows and cells, and words for each figure', async () => {
    const { roles, alternatives } = await whole;
    for (const role of ['H1', 'H2', 'H3', 'P', 'Table', 'TR', 'TH', 'TD', 'Figure']) expect(roles).toContain(role);
    expect(alternatives).toHaveLength(2);
    const chilling = 'Core temperature, chilling. probe 1, middle of the rack: 23 readings, from 148 °F';
    expect(alternatives[1]).toContain(chilling);
    expect(alternatives[1]).toContain('130 → 80 °F, 2 h 15 min of 1 h 30 min, missed');
  });

  test('a table that runs over the page stays one table', async () => {
    const { inputs, ...lot } = aLotRecord();
    const print = async (times: number) => {
      const more = Array.from({ length: times }, () => inputs).flat();
      const { bytes, pages } = await readBack(lotRecord({ ...lot, inputs: more }));
      return { tables: bytes.toString('latin1').split('/S /Table').length - 1, pages: pages.length };
    };
    const [short, long] = [await print(1), await print(16)];
    expect(long.pages).toBeGreaterThan(short.pages);
    expect(short.tables).toBeGreaterThan(5);
    expect(long.tables).toBe(short.tables);
  });

  test('the outline leads to every section', async () => {
    const { outline } = await whole;
    for (const entry of ['Verdicts', 'Inputs', 'CCP 1 Cooking', 'Mass balance', 'Pre-shipment review']) {
      expect(outline).toContain(entry);
    }
  });
});
