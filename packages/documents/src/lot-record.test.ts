import { describe, expect, test } from 'vitest';
import { lotRecord } from './lot-record';
import { readBack, strikesIn, type FoundPage } from './read-back.test-data';
import { aLotRecord } from './lot-record.test-data';
import { aDeviation, aSheet, at } from './samples.test-data';

/** Printed once for all that only read it. */
const whole = readBack(lotRecord(aLotRecord()));

describe('the record of a lot', () => {
  test('says what went in, what was weighed and measured, and what became of it', async () => {
    const { text } = await whole;
    for (const said of [
      'RS-250904-1',
      'Smoked ring sausage with marjoram',
      'Cleared to ship',
      'Cured, smoked, cooked sausage, version 3',
      'Three Oaks Packing',
      '2509-7731',
      'Est. 00981-X',
      '36.40 kg',
      '2.10 kg',
      'rework of RS-250828-2',
      '48.60 kg',
      '156.25 ppm',
      '121.5 g',
      'CCP 1',
      'CCP 2',
      '40 packages of A',
      'DN 3391',
      'Unaccounted for',
      '1.33 kg',
      'reads 32.2 °F in ice water, within ± 1 °F',
      'no check of it was known',
      'Rowan Ellery',
      'Sep 5, 2025, 1:20 pm CDT',
    ])
      expect(text).toContain(said);
  });

  test('says what was found in the readings of a control point, beside its curve', async () => {
    const {
      controlPoints: [point],
      ...lot
    } = aLotRecord();
    if (!point) throw new Error('the sample has a control point');
    const found = ['Gap without a reading, 2 h: 120 °F, then 45 °F. Used as it is.'];
    const { text } = await readBack(lotRecord({ ...lot, controlPoints: [{ ...point, found }] }));
    expect(text).toContain('Gap without a reading, 2 h: 120 °F, then 45 °F. Used as it is.');
  });

  test('keeps the signs a limit is written with', async () => {
    const { text } = await whole;
    for (const limit of ['≥ 145 °F for 4 min', '≤ 156 ppm', '130 → 80 °F within 1.5 h', '¼ oz to 100 lb', '6.25 %']) {
      expect(text).toContain(limit);
    }
  });

  test('gives each verdict in words, with its margin, its reason and its source', async () => {
    const { text } = await whole;
    expect(text).toContain('met, 10 min to spare');
    expect(text).toContain('missed, 45 min too long');
    expect(text).toContain('undetermined');
    expect(text).toContain('Nobody has answered for the second roll of labels.');
    expect(text).toContain('(Revised Appendix A), December 2021');
    expect(text).toContain('This figure has not been confirmed against its source.');
  });

  test('shows a mistake and its correction: old value, new value, why, who, when', async () => {
    const { text } = await whole;
    expect(text).toContain('174.7 °F → 147.7 °F');
    expect(text).toContain('Typed the digits in the wrong order');
    expect(text).toContain('(Tomas Reed, Sep 4, 2025, 11:46 am)');
  });

  test('flags what is odd about a reading instead of hiding it', async () => {
    const { text } = await whole;
    expect(text).toContain('a 12:03 pm');
    expect(text).toContain('Flagged a taken while the tablet had no network');
    expect(text).toContain('Entered Sep 4, 2025, 12:20 pm, sent by Ida Marsh');
  });

  test('sets the readings of a curve in columns, and keeps what is odd about one of them', async () => {
    const { controlPoints, ...lot } = aLotRecord();
    const odd = { flags: ['no instrument named'], note: 'door opened' };
    const points = controlPoints.map((point) => ({
      ...point,
      readings: point.readings.map((each) => (each.value === '94.1' ? { ...each, ...odd } : each)),
    }));
    const { text } = await readBack(lotRecord({ ...lot, controlPoints: points }));
    expect(text).toContain('core, middle of the rack, probe 1, T-03, taken by Tomas Reed');
    expect(text).toContain('11:55 am 148.0 °F');
    expect(text).toContain('a b 1:40 pm 94.1 °F');
    expect(text).toContain('Flagged a no instrument named b “door opened”');
  });

  test('notes with a letter what was said of a reading of a curve, and that it was taken back', async () => {
    const { controlPoints, ...lot } = aLotRecord();
    const at = Date.parse('2025-09-04T19:00:00Z');
    const clarifications = [
      { word: 'not of the core', why: 'Probe in the air', by: 'Ida Marsh', at },
      { word: 'as recorded', why: 'It was in the link', by: 'Tomas Reed', at },
    ];
    const points = controlPoints.map((point) => ({
      ...point,
      readings: point.readings.map((each) => (each.value === '94.1' ? { ...each, clarifications } : each)),
    }));
    const { text } = await readBack(lotRecord({ ...lot, controlPoints: points }));
    expect(text).toContain('a b 1:40 pm 94.1 °F');
    expect(text).toContain('Clarified: not of the core. Probe in the air (Ida Marsh, Sep 4, 2025, 2:00 pm)');
    expect(text).toContain('Clarified: as recorded. It was in the link (Tomas Reed, Sep 4, 2025, 2:00 pm)');
  });

  test('says once what was said of many readings of a curve', async () => {
    const lot = aLotRecord();
    const chill = lot.controlPoints.find(({ name }) => name === 'Chilling');
    if (!chill) throw new Error('the sample chills');
    const said = { word: 'not of the core', why: 'The probe lay on the table.', by: 'Nora Vale', at: at(4, 18) };
    const readings = chill.readings.map((reading, index) =>
      index < 4 ? { ...reading, clarifications: [said], isLeftOut: true } : reading,
    );
    const { text } = await readBack(lotRecord({ ...lot, controlPoints: [{ ...chill, readings }] }));
    expect(text.match(/The probe lay on the table/g)).toHaveLength(1);
  });

  test('leaves no more than a third of a page blank before a control point with a figure', async () => {
    const lot = aLotRecord();
    const chill = lot.controlPoints.find(({ name }) => name === 'Chilling');
    if (!chill) throw new Error('the sample chills');
    const few = { ...lot, weighings: lot.weighings.slice(0, 1), controlPoints: [chill], deviations: [] };
    for (const inputs of [2, 6, 10, 14, 18, 22]) {
      const own = { ...few, inputs: Array.from({ length: inputs }, () => lot.inputs[0] as (typeof lot.inputs)[number]) };
      const { pages } = await readBack(lotRecord(own));
      const before = pages.findIndex(({ text }) => text.includes('Growth of Clostridium')) - 1;
      const page = pages[before];
      if (!page) continue;
      const written = page.items.filter(({ y }) => y > 90).map(({ y }) => y);
      expect(Math.min(...written)).toBeLessThan(page.height / 3 + 90);
    }
  });

  test('points from a control point that is judged by weight to its weighings', async () => {
    const { text } = await whole;
    expect(text).toContain('Weighings Curing salt 6.25 %, 121.5 g. See Formula and cure.');
    expect(text).toContain('at PRE 3');
    const none = await readBack(lotRecord(aLotRecord({ weighings: [] })));
    expect(none.text).toContain('Weighings None recorded.');
  });

  test('answers a deviation in the four parts of 9 CFR 417.3(a), with disposition and closing', async () => {
    const { text } = await whole;
    for (const part of ['417.3(a)(1)', '417.3(a)(2)', '417.3(a)(3)', '417.3(a)(4)']) expect(text).toContain(part);
    expect(text).toContain('release: 43.10 kg');
    expect(text).toContain('All four parts are answered.');
  });

  test('says of an open deviation what is not recorded yet', async () => {
    const parts = aDeviation().parts.map((part, i) => (i < 2 ? part : { ...part, said: [] }));
    const open = aDeviation({ parts, dispositions: [], undecided: '43.10 kg of 43.10 kg', closed: undefined });
    const { text } = await readBack(lotRecord(aLotRecord({ deviations: [open] })));
    expect(text).toContain('Measures to prevent recurrence Not recorded.');
    expect(text).toContain('Not decided: 43.10 kg of 43.10 kg.');
    expect(text).toContain('Open. The lot is on hold.');
    expect(text).toContain('deviation 2025-014, still open');
  });

  test('says plainly that nobody has reviewed the lot, and what stands in the way', async () => {
    const { text } = await readBack(lotRecord(aLotRecord({ reviews: [], outstanding: ['Deviation 2025-014 is open.'] })));
    expect(text).toContain('Not reviewed.');
    expect(text).toContain('Deviation 2025-014 is open.');
    expect(text).not.toContain('Signed');
  });

  test('strikes the statement and the name of a review that was taken back, and of no other', async () => {
    const review = { by: 'Nora Vale', at: at(5, 13), cleared: false, statement: 'All limits met.' };
    const printed = async (given: object) => strikesIn(await readBack(lotRecord(aLotRecord({ reviews: [{ ...review, ...given }] }))));
    expect((await printed({ takenBack: 'Signed too early.' })) - (await printed({}))).toBe(2);
  });

  test('says when the only worker reviewed records of their own making', async () => {
    const review = { by: 'Nora Vale', at: at(5, 13), cleared: true, statement: 'Reviewed.', soleWorker: true };
    const { text } = await readBack(lotRecord(aLotRecord({ reviews: [review] })));
    expect(text).toContain('Signed by the only worker of the establishment, who also made the records.');
  });

  test('of a lot with nothing recorded yet is still a sheet', async () => {
    const { sheet, lot } = aLotRecord();
    const empty = {
      inputs: [],
      weighings: [],
      controlPoints: [],
      deviations: [],
      packages: [],
      shipments: [],
      losses: [],
      balance: [],
      reviews: [],
      outstanding: [],
      instruments: [],
    };
    const { pages, text } = await readBack(lotRecord({ sheet: { ...sheet, ledgerHead: undefined }, lot, ...empty }));
    expect(pages).toHaveLength(1);
    expect(text).toContain('Inputs none recorded');
    expect(text).toContain('Ledger without entries');
  });

  test('prints the whole hash of the ledger, and its beginning on every page', async () => {
    const { pages, text } = await whole;
    expect(text).toContain('9f3c 2a71 b004 e1d2 7c55 aa90 d1f0 e38b 6142 cc77 30ab 95e2 f84d 016b 3c9a e57d');
    for (const page of pages) expect(page.text).toContain('Ledger head 18204 · 9f3c 2a71 b004 e1d2');
  });

  test('carries on every page who keeps it, which lot, which page, when printed and the caution', async () => {
    const { pages } = await whole;
    expect(pages.length).toBeGreaterThan(3);
    for (const [index, { text }] of pages.entries()) {
      for (const said of [
        'Alder Row Smokehouse',
        'Est. 00417-D · 14 Mill Lane',
        'Lot record',
        'Lot RS-250904-1',
        `Page ${index + 1} of ${pages.length}`,
        'Printed Sep 9, 2025, 2:05 pm CDT by Nora Vale',
        'Printed copy of electronic records.',
        'it does not validate a process',
      ])
        expect(text).toContain(said);
    }
  });
});

describe('the file', () => {
  test('is the same, byte for byte, when the same data are printed twice', async () => {
    const [one, other] = [await whole, await readBack(lotRecord(aLotRecord()))];
    expect(one.bytes.equals(other.bytes)).toBe(true);
  });

  test('differs when it is printed a minute later', async () => {
    const later = aSheet({ printed: { by: 'Nora Vale', at: at(9, 14, 6) } });
    const [one, other] = [await whole, await readBack(lotRecord(aLotRecord({ sheet: later })))];
    expect(one.bytes.equals(other.bytes)).toBe(false);
  });

  test('names itself, its establishment and its language', async () => {
    const { title, author, language } = await whole;
    expect(title).toBe('Lot record: Lot RS-250904-1, Smoked ring sausage with marjoram');
    expect(author).toBe('Alder Row Smokehouse');
    expect(language).toBe('en');
  });

  test.each([
    ['Letter', 612, 792],
    ['A4', 595.28, 841.89],
  ] as const)('is on %s paper', async (paper, width, height) => {
    const { pages } = await readBack(lotRecord(aLotRecord({ sheet: aSheet({ paper }) })));
    expect(pages[0]?.width).toBeCloseTo(width, 1);
    expect(pages[0]?.height).toBeCloseTo(height, 1);
  });

  test('on A4 writes dates and times as they are written there, unless the establishment says otherwise', async () => {
    const inA4 = await readBack(lotRecord(aLotRecord({ sheet: aSheet({ paper: 'A4' }) })));
    expect(inA4.text).toContain('Printed 9 Sept 2025, 14:05 CDT');
    const { establishment } = aSheet();
    const inUsStyle = aSheet({ paper: 'A4', establishment: { ...establishment, timeStyle: 'US' } });
    expect((await readBack(lotRecord(aLotRecord({ sheet: inUsStyle })))).text).toContain('Printed Sep 9, 2025, 2:05 pm CDT');
  });
});

describe('the layout', () => {
  const headings = ['Inputs', 'Formula and cure', 'Readings', 'Packages', 'Shipments', 'Losses', 'Mass balance', 'Instruments'];

  test('never leaves a heading or the heads of columns alone at the foot of a page', async () => {
    const { inputs, ...lot } = aLotRecord();
    for (let rows = 4; rows <= 24; rows += 4) {
      const more = Array.from({ length: rows }, () => inputs)
        .flat()
        .slice(0, rows);
      const { pages } = await readBack(lotRecord({ ...lot, inputs: more }));
      for (const page of pages) {
        const lowest = lowestLine(page);
        expect(headings.map((each) => [each])).not.toContainEqual(lowest);
        expect(lowest).not.toContain('Taken by');
        expect(lowest).not.toContain('Weighed by');
      }
    }
  }, 30_000);

  test('lets no word run over the edge, however long names and codes are', async () => {
    const long = 'Slow-smoked heritage shoulder with juniper and a name that does not end ';
    const { inputs, controlPoints, lot, ...rest } = aLotRecord();
    const { pages } = await readBack(
      lotRecord({
        ...rest,
        lot: { ...lot, code: `RS-${'0123456789'.repeat(6)}`, product: long.repeat(3) },
        sheet: aSheet({ establishment: { ...aSheet().establishment, name: long.repeat(3), address: long.repeat(3) } }),
        inputs: inputs.map((input) => ({ ...input, item: long.repeat(2), supplierLot: '9'.repeat(90), by: 'Featherstonehaugh'.repeat(3) })),
        controlPoints: controlPoints.map((point) => ({
          ...point,
          figures: point.figures?.map((each) => ({
            ...each,
            limits: [
              { value: 80, label: long },
              { value: 81, label: long },
            ],
          })),
        })),
      }),
    );
    for (const { items, width } of pages) {
      for (const { x, width: wide } of items) {
        expect(x).toBeGreaterThan(41);
        expect(x + wide).toBeLessThan(width - 41);
      }
    }
  });

  test('runs a statement over the page when it fits none, and loses no word of it', async () => {
    const words = Array.from({ length: 1500 }, (_each, index) => `w${index}`);
    const said = [{ by: 'Nora Vale', at: at(4, 15), text: words.join(' ') }];
    const parts = aDeviation().parts.map((part) => ({ ...part, said }));
    const { text } = await readBack(lotRecord(aLotRecord({ deviations: [aDeviation({ parts })] })));
    const found = new Set(text.split(/\s/));
    expect(words.filter((word) => !found.has(word))).toEqual([]);
  });

  test('spells out a character that the typeface does not have, so that it cannot vanish', async () => {
    const { lot, ...rest } = aLotRecord();
    const { text } = await readBack(lotRecord({ ...rest, lot: { ...lot, product: 'Żurek 肉 with 🥓' } }));
    expect(text).toContain('Żurek [U+8089] with [U+1F953]');
  });

  /** Between the running head and the foot of the page, the words that stand lowest, from left to right. */
  function lowestLine({ items, height }: FoundPage): string[] {
    const inBody = items.filter(({ y }) => y > 64 && y < height - 64);
    const lowest = Math.min(...inBody.map(({ y }) => y));
    const line = inBody.filter(({ y }) => Math.abs(y - lowest) < 3).sort((one, other) => one.x - other.x);
    return line.map(({ text }) => text);
  }
});
