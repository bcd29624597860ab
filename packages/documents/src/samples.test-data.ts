import type { Source, Told } from '@larderbook/haccp';
import type { DeviationData, ReadingData } from './entry-data';
import type { SheetData } from './sheet-data';

/** Invented shop, people and lots; used by tests only. Times are in 2025, UTC−05:00 in the shop. */
export const at = (day: number, hour: number, minute = 0) => Date.UTC(2025, 8, day, hour + 5, minute);

export const cooking: Source = {
  citation: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A)',
  edition: 'December 2021',
  confirmed: true,
};
export const cooling: Source = {
  citation: 'FSIS Stabilization Guideline for Meat and Poultry Products (Revised Appendix B)',
  edition: 'December 2021',
  confirmed: false,
};
export const cure: Source = { citation: '9 CFR 424.21(c)', edition: '1-1-24', confirmed: true };
export const house: Source = { citation: 'House plan', edition: 'version 3', confirmed: true };

export function aSheet(sheet: Partial<SheetData> = {}): SheetData {
  return {
    establishment: {
      name: 'Alder Row Smokehouse',
      number: '00417-D',
      address: '14 Mill Lane, Harrow Bridge',
      timeZone: 'America/Chicago',
    },
    paper: 'Letter',
    printed: { by: 'Nora Vale', at: at(9, 14, 5) },
    ledgerHead: { sequence: 18204, hash: '9f3c2a71b004e1d27c55aa90d1f0e38b6142cc7730ab95e2f84d016b3c9ae57d' },
    ...sheet,
  };
}

export function aVerdict(verdict: Partial<Told> = {}): Told {
  return {
    kind: 'met',
    measured: '14 min at or above 145 °F',
    limit: '≥ 145 °F for 4 min',
    margin: '10 min to spare',
    because: 'Between two readings the colder one counts; it stayed at or above 145 °F for longer than the row asks.',
    notes: ['Interpolated: 14.6 min. For information only.'],
    source: cooking,
    ...verdict,
  };
}

export const tooSlow = aVerdict({
  kind: 'missed',
  measured: '2 h 15 min from 130 to 80 °F',
  limit: '130 → 80 °F within 1.5 h',
  margin: '45 min too long',
  because: 'Counted from the last reading at or above 130 °F (12:10 pm) to the first at or below 80 °F (2:25 pm).',
  next: 'Hold the lot, move it to the blast chiller and decide its disposition with the plan.',
  notes: [],
  source: cooling,
});

export const nitrite = aVerdict({
  measured: '156.25 ppm',
  limit: '≤ 156 ppm',
  margin: 'at the limit',
  because: '121.5 g of curing salt with 6.25 % sodium nitrite in 48.60 kg of meat; ¼ oz to 100 lb is 156.25 ppm.',
  notes: [],
  source: cure,
});

export function reading(reading: Partial<ReadingData> & Pick<ReadingData, 'at' | 'value'>): ReadingData {
  return {
    by: 'Tomas Reed',
    unit: '°F',
    what: 'core, thickest link',
    probe: 'probe 1',
    instrument: 'T-03',
    ...reading,
  };
}

export function aDeviation(deviation: Partial<DeviationData> = {}): DeviationData {
  return {
    number: '2025-014',
    controlPoint: 'Chilling',
    opened: { by: 'Tomas Reed', at: at(4, 14, 26) },
    verdict: tooSlow,
    kind: 'Critical limit missed',
    answeredUnder: '9 CFR 417.3(a)',
    recurrence: [],
    parts: [
      {
        paragraph: '417.3(a)(1)',
        asks: 'Cause identified and eliminated',
        said: [
          {
            by: 'Nora Vale',
            at: at(4, 14, 40),
            text: 'The chiller door did not close: a hook stood in the seal. Hook removed, seal checked, door holds.',
          },
        ],
      },
      {
        paragraph: '417.3(a)(2)',
        asks: 'Control point under control again',
        said: [
          {
            by: 'Nora Vale',
            at: at(4, 15, 30),
            text: 'Core 59.8 °F at 3:25 pm and falling 4 °F every quarter of an hour, well within the second stage.',
          },
        ],
      },
      {
        paragraph: '417.3(a)(3)',
        asks: 'Measures to prevent recurrence',
        said: [
          {
            by: 'Nora Vale',
            at: at(5, 9, 10),
            text: 'Door check added to the rack-in step; hooks are hung on the inner rail from today.',
          },
        ],
      },
      {
        paragraph: '417.3(a)(4)',
        asks: 'No injurious or adulterated product enters commerce',
        said: [
          {
            by: 'Nora Vale',
            at: at(5, 9, 25),
            text:
              'Whole lot held in cooler 2 under tag 88. Growth predicted below 1 log of C. perfringens; ' +
              'the process authority was asked and agreed in writing.',
          },
        ],
      },
    ],
    done: 'Core 59.8 °F at 3:25 pm and falling 4 °F every quarter of an hour, well within the second stage.',
    dispositions: [
      {
        by: 'Nora Vale',
        at: at(5, 11, 0),
        decision: 'release',
        quantity: '43.10 kg',
        why: 'Agreed in writing, letter kept with the plan',
      },
    ],
    closed: { by: 'Nora Vale', at: at(5, 11, 5), statement: 'All four parts are answered.' },
    ...deviation,
  };
}
