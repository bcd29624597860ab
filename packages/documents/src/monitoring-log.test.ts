import { setImmediate as turn } from 'node:timers/promises';
import { buffer } from 'node:stream/consumers';
import { describe, expect, test } from 'vitest';
import { monitoringLog } from './monitoring-log';
import type { MonitoringRowData } from './monitoring-log-data';
import { readBack } from './read-back.test-data';
import { aLoggedReading, aMonitoringLog } from './monitoring-log.test-data';
import { at, aVerdict } from './samples.test-data';

const many = (count: number) =>
  Array.from({ length: count }, (_each, index) =>
    aLoggedReading({ at: at(1 + Math.floor(index / 6), 7 + (index % 6)), lot: `RS-${index}` }),
  );

describe('the monitoring log', () => {
  test('heads the log with control point, hazard, limit, source, monitoring and calibration', async () => {
    const { text } = await readBack(monitoringLog(aMonitoringLog()));
    for (const said of [
      'Cooking',
      'CCP 1, critical control point at smokehouse',
      'Sep 1, 2025 to Sep 30, 2025',
      'Survival of Salmonella',
      '≥ 145 °F for 4 min',
      '(Revised Appendix A), December 2021',
      'How Probe thermometer. How often Every cook. By whom Operator.',
      'checked Sep 1, 2025, 8:00 am by Nora Vale',
    ])
      expect(text).toContain(said);
  });

  test('has date, time, lot, product, reading, limit, verdict in words, observation and initials', async () => {
    const row = aLoggedReading({ note: 'both racks even' });
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [row] })));
    for (const said of [
      'Sep 4, 2025',
      '11:50 am',
      'RS-250904-1',
      'Smoked ring sausage with marjoram',
      '151.5 °F',
      'met, 10 min to spare',
      'core, thickest link, T-03',
      '“both racks even”',
      'TR Tomas Reed',
    ])
      expect(text).toContain(said);
  });

  test('of three pages repeats its heads and the day, and says which page of three', async () => {
    const { pages } = await readBack(monitoringLog(aMonitoringLog({ rows: many(42) })));
    expect(pages).toHaveLength(3);
    expect(pages[1]?.text).toContain('Page 2 of 3');
    for (const { text } of pages) {
      expect(text).toContain('Lot Product Reading Verdict Observation Initials');
      expect(text).toMatch(/Sep \d+, 2025 \d+:00 [ap]m RS-/);
    }
  });

  test('prints every row once', async () => {
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: many(200) })));
    const lots = text.match(/\bRS-\d+\b/g) ?? [];
    expect(lots).toEqual(many(200).map(({ lot }) => lot));
  });

  test('frames a missed limit: what was missed, by how much, and the deviation that answers it', async () => {
    const verdict = aVerdict({
      kind: 'missed',
      measured: '0 min at or above 145 °F',
      margin: '4 min short',
      because: 'The core stayed at 141.5 °F.',
    });
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [aLoggedReading({ verdict, deviation: '2025-014' })] })));
    expect(text).toContain('missed, 4 min short');
    expect(text).toContain('0 min at or above 145 °F against ≥ 145 °F for 4 min: 4 min short.');
    expect(text).toContain('Corrective action: deviation 2025-014');
  });

  test('says so when a limit was missed and nothing was done', async () => {
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [aLoggedReading({ verdict: aVerdict({ kind: 'missed' }) })] })));
    expect(text).toContain('No corrective action is recorded.');
  });

  test('states the limit once, and again only where another was in force', async () => {
    const rows = [aLoggedReading(), aLoggedReading({ at: at(5, 9), limit: '≥ 158 °F, no holding time' })];
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows })));
    expect(text.match(/≥ 145 °F for 4 min/g)).toHaveLength(1);
    expect(text).toContain('Limit in force: ≥ 158 °F, no holding time');
  });

  test('judges a curve in a row of its own, and frames it when it missed', async () => {
    const reading = aLoggedReading({ verdict: undefined, isOfCurve: true });
    const verdict = aVerdict({ kind: 'missed', measured: '0 min at or above 145 °F', margin: '4 min short' });
    const curve: MonitoringRowData = {
      kind: 'curve',
      at: at(4, 12),
      lot: 'RS-250904-1',
      limit: '≥ 145 °F for 4 min',
      verdict,
      deviation: '2025-014',
    };
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [reading, reading, curve] })));
    expect(text.match(/part of a curve/g)).toHaveLength(2);
    expect(text).toContain('curve missed, 4 min short');
    expect(text).toContain('Corrective action: deviation 2025-014');
    expect(text).toContain('1 curve missed, 2 readings of curves');
  });

  test('marks odd entries with the letter of a legend that says each thing once', async () => {
    const flags = ['no instrument named'];
    const rows = [aLoggedReading({ flags }), aLoggedReading({ at: at(5, 9), flags })];
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows })));
    expect(text).toContain('a 11:50 am');
    expect(text).toContain('a 9:00 am');
    expect(text.match(/no instrument named/g)).toHaveLength(1);
  });

  test('shows a check that nobody made, and does not count it as met', async () => {
    const notDone: MonitoringRowData = { kind: 'not done', dueAt: at(5, 9), what: 'core, lower rack' };
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [aLoggedReading(), notDone] })));
    expect(text).toContain('check not made');
    expect(text).toContain('1 met; 1 check not made');
  });

  test('shows an amended reading with both values', async () => {
    const amendments = [
      {
        field: 'value',
        was: '105.6 °F',
        now: '150.6 °F',
        why: 'Digits turned round',
        by: 'Tomas Reed',
        at: at(4, 12),
      },
    ];
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [aLoggedReading({ value: '150.6', amendments })] })));
    expect(text).toContain('Corrected value: 105.6 °F → 150.6 °F');
  });

  test('keeps a reading that was not of the core, says who said so and why, and counts it as no part of the curve', async () => {
    const said = { word: 'not of the core', why: 'The probe lay on the table', by: 'Ida Marsh', at: at(4, 12) };
    const row = aLoggedReading({ value: '79.3', verdict: undefined, isOfCurve: true, clarifications: [said], isLeftOut: true });
    const { text } = await readBack(monitoringLog(aMonitoringLog({ rows: [row] })));
    expect(text).toContain('79.3 °F');
    expect(text).toContain('not judged');
    expect(text).not.toContain('part of a curve');
    expect(text).toContain('Clarified: not of the core. The probe lay on the table (Ida Marsh, Sep 4, 2025, 12:00 pm)');
  });

  test('of a period without readings says so, and offers a line to review it on paper', async () => {
    const { text, pages } = await readBack(monitoringLog(aMonitoringLog({ rows: [] })));
    expect(text).toContain('No reading was taken in this period.');
    expect(text).toContain('No review of this period is recorded.');
    expect(pages).toHaveLength(1);
  });

  test('names who reviewed the period, in place of the line', async () => {
    const reviews = [{ by: 'Rowan Ellery', at: at(30, 16), text: 'Records complete; one deviation, closed.' }];
    const { text } = await readBack(monitoringLog(aMonitoringLog({ reviews })));
    expect(text).toContain('Rowan Ellery, Sep 30, 2025, 4:00 pm CDT');
    expect(text).not.toContain('No review of this period');
  });

  test('is the same, byte for byte, from a list and from a cursor', async () => {
    async function* cursor() {
      for (const row of many(60)) yield row;
    }
    const fromList = await buffer(monitoringLog(aMonitoringLog({ rows: many(60) })));
    const fromCursor = await buffer(monitoringLog(aMonitoringLog({ rows: cursor() })));
    expect(fromList.equals(fromCursor)).toBe(true);
  });
});

describe('a long log', () => {
  test('is drawn no faster than it is read', async () => {
    const taken = { rows: 0 };
    function* cursor() {
      for (const row of many(5000)) {
        taken.rows += 1;
        yield row;
      }
    }
    const document = monitoringLog(aMonitoringLog({ rows: cursor() }));
    for (let turns = 0; turns < 1000; turns += 1) await turn();
    expect(taken.rows).toBeLessThan(1000);
    await buffer(document);
    expect(taken.rows).toBe(5000);
  });

  test('lets go of its source when the reader goes away', async () => {
    let isClosed = false;
    async function* cursor() {
      try {
        for (const row of many(5000)) yield row;
      } finally {
        isClosed = true;
      }
    }
    const document = monitoringLog(aMonitoringLog({ rows: cursor() }));
    await turn();
    document.destroy();
    await expect.poll(() => isClosed).toBe(true);
  });

  test('fails with the error of its source, rather than end as if it were whole', async () => {
    async function* broken() {
      yield aLoggedReading();
      throw new Error('connection lost');
    }
    await expect(buffer(monitoringLog(aMonitoringLog({ rows: broken() })))).rejects.toThrow('connection lost');
  });
});
