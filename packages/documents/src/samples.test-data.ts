import type { Source, Verdict } from '@larderbook/haccp';
import type { DeviationData, ReadingData } from './entry-data';
import type { DeviationReportData } from './deviation-report-data';
import type { FigureData, LotRecordData } from './lot-record-data';
import type { MonitoredReadingData, MonitoringLogData } from './monitoring-log-data';
import type { SheetData } from './sheet-data';

/** Invented shop, people and lots; used by tests only. Times are in 2025, UTC−05:00 in the shop. */
export const at = (day: number, hour: number, minute = 0) => Date.UTC(2025, 8, day, hour + 5, minute);

const cooking: Source = {
  citation: 'FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A)', edition: 'December 2021',
  confirmed: true,
};
const cooling: Source = {
  citation: 'FSIS Stabilization Guideline for Meat and Poultry Products (Revised Appendix B)', edition: 'December 2021',
  confirmed: false,
};
const cure: Source = { citation: '9 CFR 424.21(c)', edition: '1-1-24', confirmed: true };
const house: Source = { citation: 'House plan', edition: 'version 3', confirmed: true };

export function aSheet(sheet: Partial<SheetData> = {}): SheetData {
  return {
    establishment: {
      name: 'Alder Row Smokehouse', number: '00417-D', address: '14 Mill Lane, Harrow Bridge',
      timeZone: 'America/Chicago',
    },
    paper: 'Letter',
    printed: { by: 'Nora Vale', at: at(9, 14, 5) },
    ledgerHead: { sequence: 18204, hash: '9f3c2a71b004e1d27c55aa90d1f0e38b6142cc7730ab95e2f84d016b3c9ae57d' },
    ...sheet,
  };
}

export function aVerdict(verdict: Partial<Verdict> = {}): Verdict {
  return {
    kind: 'met', measured: '14 min at or above 145 °F', limit: '≥ 145 °F for 4 min', margin: '10 min to spare',
    because: 'Between two readings the colder one counts; it stayed at or above 145 °F for longer than the row asks.',
    notes: ['Interpolated: 14.6 min. For information only.'], source: cooking, ...verdict,
  };
}

const tooSlow = aVerdict({
  kind: 'missed', measured: '2 h 15 min from 130 to 80 °F', limit: '130 → 80 °F within 1.5 h',
  margin: '45 min too long',
  because: 'Counted from the last reading at or above 130 °F (12:10 pm) to the first at or below 80 °F (2:25 pm).',
  next: 'Hold the lot, move it to the blast chiller and decide its disposition with the plan.', notes: [],
  source: cooling,
});

const nitrite = aVerdict({
  measured: '156.25 ppm', limit: '≤ 156 ppm', margin: 'at the limit',
  because: '121.5 g of curing salt with 6.25 % sodium nitrite in 48.60 kg of meat; ¼ oz to 100 lb is 156.25 ppm.',
  notes: [], source: cure,
});

const minute = 60_000;
const loaded = at(4, 8, 10);

/** A core warming towards 150 °F in four hours; the lower rack is a little colder. */
function warmed(taken: number, share = 1): number {
  const part = (taken - loaded) / (235 * minute);
  return Math.round((41 + 112 * (1 - Math.exp(-2.9 * part)) * share + 3 * part) * 10) / 10;
}

const everyMinute = Array.from({ length: 236 }, (_each, index) => loaded + index * minute);
const chilled = [
  148, 139, 129.8, 122, 114.5, 107.2, 100.4, 94.1, 88.3, 83, 78.2, 73.4, 68.4, 63.9, 59.8, 56.1, 52.8, 49.9, 47.3, 45,
  43, 41.4, 39.9,
].map((value, index) => ({ at: at(4, 11, 55) + index * 15 * minute, value }));

const cookFigure: FigureData = {
  title: 'Core temperature, cooking', unit: '°F',
  series: [
    { label: 'probe 1, thickest link', points: everyMinute.map((taken) => ({ at: taken, value: warmed(taken) })) },
    { label: 'probe 2, lower rack', points: everyMinute.map((taken) => ({ at: taken, value: warmed(taken, 0.965) })) },
  ],
  limits: [
    { value: 145, label: '≥ 145 °F for 4 min' }, { value: 50, label: 'come-up from 50 °F' },
    { value: 130, label: 'to 130 °F' },
  ],
  stages: [{
    label: 'Come-up, 50 → 130 °F', spent: '1 h 56 min of 6 h', from: at(4, 8, 17), to: at(4, 10, 13),
    deadline: at(4, 14, 17),
  }],
  panel: {
    title: 'Lethality so far, log10, model estimate',
    lines: ['about 6.5 log (Salmonella, by the meat table; model estimate)', 'about 2 log (Listeria monocytogenes)'].map(
      (label, index) => ({
        label,
        points: everyMinute.map((taken, minutes) => ({ at: taken, value: Math.max(0, (minutes - 150) / (13 + 30 * index)) })),
      }),
    ),
  },
};
const chillFigure: FigureData = {
  title: 'Core temperature, chilling', unit: '°F',
  series: [{ label: 'probe 1, middle of the rack', points: chilled }],
  limits: [
    { value: 130, label: '130 °F', band: [129, 131] }, { value: 80, label: '≤ 80 °F within 1.5 h', band: [79, 81] },
    { value: 40, label: '≤ 40 °F within 5 h more', band: [39, 41] },
  ],
  crossings: [
    { label: '130 °F', value: 130, after: at(4, 12, 10), by: at(4, 12, 25), straight: at(4, 12, 24) },
    { label: '80 °F', value: 80, after: at(4, 14, 10), by: at(4, 14, 25), straight: at(4, 14, 19), chilled: at(4, 14, 18) },
  ],
  surroundings: [at(4, 11, 55), at(4, 14, 0), at(4, 17, 25)].map((taken) => ({ at: taken, value: 33 })),
  stages: [
    {
      label: '130 → 80 °F', spent: '2 h 15 min of 1 h 30 min', from: at(4, 12, 10), to: at(4, 14, 25),
      deadline: at(4, 13, 40), missed: true,
    },
    { label: '80 → 40 °F', spent: '3 h 0 min of 5 h', from: at(4, 14, 25), to: at(4, 17, 25), deadline: at(4, 19, 25) },
  ],
};

function reading(reading: Partial<ReadingData> & Pick<ReadingData, 'at' | 'value'>): ReadingData {
  return {
    by: 'Tomas Reed', unit: '°F', what: 'core, thickest link', probe: 'probe 1', instrument: 'T-03', ...reading,
  };
}

export function aDeviation(deviation: Partial<DeviationData> = {}): DeviationData {
  return {
    number: '2025-014', controlPoint: 'Chilling', opened: { by: 'Tomas Reed', at: at(4, 14, 26) }, verdict: tooSlow,
    kind: 'Critical limit missed', answeredUnder: '9 CFR 417.3(a)', recurrence: [],
    parts: [
      {
        paragraph: '417.3(a)(1)', asks: 'Cause identified and eliminated',
        said: [{
          by: 'Nora Vale', at: at(4, 14, 40),
          text: 'The chiller door did not close: a hook stood in the seal. Hook removed, seal checked, door holds.',
        }],
      },
      {
        paragraph: '417.3(a)(2)', asks: 'Control point under control again',
        said: [{
          by: 'Nora Vale', at: at(4, 15, 30),
          text: 'Core 59.8 °F at 3:25 pm and falling 4 °F every quarter of an hour, well within the second stage.',
        }],
      },
      {
        paragraph: '417.3(a)(3)', asks: 'Measures to prevent recurrence',
        said: [{
          by: 'Nora Vale', at: at(5, 9, 10),
          text: 'Door check added to the rack-in step; hooks are hung on the inner rail from today.',
        }],
      },
      {
        paragraph: '417.3(a)(4)', asks: 'No injurious or adulterated product enters commerce',
        said: [{
          by: 'Nora Vale', at: at(5, 9, 25),
          text: 'Whole lot held in cooler 2 under tag 88. Growth predicted below 1 log of C. perfringens; ' +
            'the process authority was asked and agreed in writing.',
        }],
      },
    ],
    done: 'Core 59.8 °F at 3:25 pm and falling 4 °F every quarter of an hour, well within the second stage.',
    dispositions: [{
      by: 'Nora Vale', at: at(5, 11, 0), decision: 'release', quantity: '43.10 kg',
      why: 'Agreed in writing, letter kept with the plan',
    }],
    closed: { by: 'Nora Vale', at: at(5, 11, 5), statement: 'All four parts are answered.' },
    ...deviation,
  };
}

export function aLotRecord(lot: Partial<LotRecordData> = {}): LotRecordData {
  return {
    sheet: aSheet(),
    lot: {
      code: 'RS-250904-1', product: 'Smoked ring sausage with marjoram', productCode: 'P-011',
      plan: 'Cured, smoked, cooked sausage, version 3',
      formula: 'Ring sausage, version 5', started: { by: 'Tomas Reed', at: at(4, 6, 30) }, stands: 'Cleared to ship',
      because: 'Reviewed Sep 5; one deviation, closed.',
      facts: [
        { label: 'Planned', value: '50.00 kg meat' }, { label: 'Packed', value: '42.60 kg in 94 packages' },
        { label: 'Yield', value: '87.7 % of the meat block' },
      ],
    },
    inputs: [
      {
        item: 'Pork shoulder, boneless', supplier: 'Three Oaks Packing', supplierLot: '2509-7731',
        establishmentNumber: '00981-X', receivedAt: at(2, 7), taken: '36.40 kg', trimmings: '2.10 kg', by: 'Tomas Reed',
        at: at(4, 6, 32),
      },
      {
        item: 'Beef trim 80/20', supplier: 'Hollow Creek Meats', supplierLot: 'HC-0902-B',
        establishmentNumber: '01177-X', receivedAt: at(3, 7), taken: '15.70 kg', trimmings: '1.40 kg', by: 'Tomas Reed',
        at: at(4, 6, 41), flags: ['entered on the device at 6:41 am, received from it at 9:02 am'],
      },
      {
        item: 'Ring sausage, broken links', reworkOf: 'RS-250828-2', taken: '1.20 kg', by: 'Tomas Reed',
        at: at(4, 6, 55),
      },
    ],
    meatBlock: {
      weight: '48.60 kg', made: '52.10 kg taken less 3.50 kg of trimmings',
    },
    weighings: [
      {
        ingredient: 'Curing salt 6.25 %', detail: 'sodium nitrite, lot CS-118', target: '121.5 g', weighed: '121.5 g',
        difference: 'as targeted', instrument: 'scale S-2', controlPoint: 'PRE 3',
        judged: [{ what: 'sodium nitrite', verdict: nitrite }],
        by: 'Tomas Reed', at: at(4, 7, 5),
      },
      {
        ingredient: 'Salt, fine', target: '826 g', weighed: '830 g', difference: '+ 4 g', instrument: 'scale S-2',
        judged: [], by: 'Tomas Reed', at: at(4, 7, 8),
      },
      {
        ingredient: 'Marjoram, rubbed', target: '97 g', weighed: '97 g', judged: [], by: 'Ida Marsh', at: at(4, 7, 9),
        amendments: [{
          field: 'weight', was: '79 g', now: '97 g', why: 'Digits turned round when typed; the scale ticket says 97',
          by: 'Ida Marsh', at: at(4, 7, 12),
        }],
      },
    ],
    controlPoints: [
      {
        number: 'PRE 1', name: 'Receiving temperature', critical: false, step: 'receiving',
        hazard: 'Growth of pathogens on raw meat that arrives warm',
        limits: [{
          printed: '≤ 40 °F', source: house,
          verdict: aVerdict({
            measured: '38.2 °F', limit: '≤ 40 °F', margin: '1.8 °F to spare',
            because: 'The warmest of two readings is below the limit.', notes: [], source: house,
          }),
        }],
        readings: [
          reading({
            at: at(2, 7, 4), value: '38.2', what: 'pork shoulder, between cartons',
            verdict: aVerdict({ margin: '1.8 °F to spare' }),
          }),
          reading({
            at: at(3, 7, 12), value: '36.9', what: 'beef trim, centre of carton',
            verdict: aVerdict({ margin: '3.1 °F to spare' }),
          }),
        ],
      },
      {
        number: 'PRE 3', name: 'Curing salt', critical: false, step: 'weighing', isWeighed: true, readings: [],
        hazard: 'Nitrite beyond what is allowed in chopped meat',
        limits: [{ what: 'sodium nitrite', printed: '≤ 156 ppm', source: cure, verdict: nitrite }],
      },
      {
        number: 'CCP 1', name: 'Cooking', critical: true, step: 'smokehouse',
        hazard: 'Survival of Salmonella, Listeria monocytogenes and other pathogens in the core',
        monitoring: {
          what: 'core temperature of the thickest link on each rack', how: 'probe thermometer',
          howOften: 'every cook, from loading until the row is met', who: 'operator',
        },
        limits: [
          { what: 'core', printed: '≥ 145 °F for 4 min', source: cooking, verdict: aVerdict() },
          {
            what: 'come-up', printed: '50 → 130 °F within 6 h', source: cooking,
            verdict: aVerdict({
              measured: '1 h 56 min', limit: '50 → 130 °F within 6 h', margin: '4 h 4 min to spare',
              because: 'Counted from the last reading at or below 50 °F to the first at or above 130 °F.', notes: [],
            }),
          },
        ],
        figures: [cookFigure],
        readings: [
          reading({ at: at(4, 8, 10), value: '41.0' }),
          reading({ at: at(4, 10, 13), value: '130.1' }),
          reading({
            at: at(4, 11, 44), value: '147.7',
            amendments: [{
              field: 'value', was: '174.7 °F', now: '147.7 °F',
              why: 'Typed the digits in the wrong order; display and second probe read 147', by: 'Tomas Reed',
              at: at(4, 11, 46),
            }],
          }),
          reading({
            at: at(4, 12, 3), value: '149.6', note: 'both racks even', receivedAt: at(4, 12, 20), sentBy: 'Ida Marsh',
            flags: ['taken while the tablet had no network'],
          }),
        ],
      },
      {
        number: 'CCP 2', name: 'Chilling', critical: true, step: 'blast chiller',
        hazard: 'Growth of Clostridium perfringens and Clostridium botulinum from surviving spores',
        monitoring: {
          what: 'core temperature in the middle of the fullest rack', how: 'probe thermometer',
          howOften: 'every 15 min until 40 °F', who: 'operator',
        },
        limits: [
          {
            what: 'stage 1', printed: '130 → 80 °F within 1.5 h', source: cooling, verdict: tooSlow,
            deviation: '2025-014',
          },
          {
            what: 'stage 2', printed: '80 → 40 °F within 5 h more', source: cooling,
            verdict: aVerdict({
              measured: '3 h 0 min from 80 to 40 °F', limit: '80 → 40 °F within 5 h', margin: '2 h 0 min to spare',
              because: 'Reached at the reading of 5:25 pm.', notes: [], source: cooling,
            }),
          },
        ],
        figures: [chillFigure],
        readings: (chillFigure.series[0]?.points ?? []).map(
          ({ at: taken, value }) => reading({ at: taken, value: value.toFixed(1), what: 'core, middle of the rack' })
        ),
      },
      {
        number: 'PRE 2', name: 'Label', critical: false, step: 'packing', hazard: 'Undeclared allergen',
        limits: [{
          printed: 'Label names mustard and celery', source: house,
          verdict: aVerdict({
            kind: 'undetermined', measured: 'no answer', limit: 'Label names mustard and celery', margin: undefined,
            because: 'Nobody has answered for the second roll of labels.', next: 'Look at the roll in use and answer.',
            notes: [], source: house,
          }),
        }],
        readings: [],
      },
    ],
    deviations: [aDeviation()],
    packages: [
      {
        code: 'RS-250904-1-A', count: 80, net: '454 g', total: '36.32 kg', useBy: 'Oct 16, 2025',
        label: 'Ring sausage, label version 4', by: 'Ida Marsh', at: at(5, 9),
      },
      {
        code: 'RS-250904-1-B', count: 14, net: '449 g', total: '6.28 kg', useBy: 'Oct 16, 2025', by: 'Ida Marsh',
        at: at(5, 9, 40),
      },
    ],
    shipments: [
      {
        customer: 'Bellwether Inn, kitchen', what: '40 packages of A', document: 'DN 3391', by: 'Ida Marsh',
        at: at(6, 8),
      },
      {
        customer: 'Farm shop at Quarry Hill', what: '30 packages of A, 14 of B', document: 'DN 3392',
        note: 'Handed over at 36.1 °F.', by: 'Ida Marsh', at: at(6, 8, 30),
      },
    ],
    losses: [{
      what: 'Cooking and drying', quantity: '5.72 kg', why: 'weighed before and after', by: 'Tomas Reed',
      at: at(4, 17, 40),
    }],
    balance: [
      { label: 'Meat block', quantity: '48.60 kg', share: '100.0 %' },
      { label: 'Other ingredients', quantity: '1.05 kg', share: '2.2 %' },
      { label: 'Packed', quantity: '42.60 kg', share: '87.7 %' },
      { label: 'Losses recorded', quantity: '5.72 kg', share: '11.8 %' },
      { label: 'Unaccounted for', quantity: '1.33 kg', share: '2.7 %', total: true },
    ],
    reviews: [{
      by: 'Rowan Ellery', at: at(5, 13, 20), cleared: true,
      statement: 'I have looked at every record of this lot. They are complete, ' +
        'critical limits were met or corrective action was taken, and the product was disposed of as the plan asks.',
      findings: [
        { heading: 'To consider', said: ['Deviation 2025-014 read; the letter of the process authority is on file.'] },
      ],
    }],
    outstanding: [],
    instruments: [
      {
        name: 'T-03', kind: 'probe thermometer',
        checks: [{ by: 'Nora Vale', at: at(1, 8), result: 'reads 32.2 °F in ice water, within ± 1 °F' }],
        flagged: [],
      },
      {
        name: 'S-2', kind: 'bench scale',
        checks: [{ by: 'Nora Vale', at: at(1, 8, 20), result: '500 g weight reads 500.1 g, within ± 0.5 g' }],
        flagged: [],
      },
      { name: 'T-05', kind: 'probe thermometer', checks: [], flagged: ['last checked more than 30 days before it was used'] },
    ],
    ...lot,
  };
}

export function aLoggedReading(row: Partial<MonitoredReadingData> = {}): MonitoredReadingData {
  return {
    kind: 'reading', at: at(4, 11, 50), by: 'Tomas Reed', initials: 'TR', lot: 'RS-250904-1',
    product: 'Smoked ring sausage with marjoram',
    value: '151.5', unit: '°F', limit: '≥ 145 °F for 4 min', what: 'core, thickest link', instrument: 'T-03',
    verdict: aVerdict(), ...row,
  };
}

export function aMonitoringLog(log: Partial<MonitoringLogData> = {}): MonitoringLogData {
  return {
    sheet: aSheet(),
    period: { from: at(1, 0), to: at(30, 23, 59) },
    controlPoint: {
      number: 'CCP 1', name: 'Cooking', critical: true, step: 'smokehouse',
      hazard: 'Survival of Salmonella, Listeria monocytogenes and other pathogens in the core',
      limits: [{ printed: '≥ 145 °F for 4 min', source: cooking }],
      monitoring: {
        what: 'core temperature of the thickest link on each rack', how: 'probe thermometer', howOften: 'every cook',
        who: 'operator',
      },
    },
    instruments: [{
      name: 'T-03', kind: 'probe thermometer',
      checks: [{ by: 'Nora Vale', at: at(1, 8), result: 'reads 32.2 °F in ice water, within ± 1 °F' }],
        flagged: [],
    }],
    product: 'Smoked sausage ring',
    rows: [aLoggedReading()],
    reviews: [],
    ...log,
  };
}

export function aDeviationReport(report: Partial<DeviationReportData> = {}): DeviationReportData {
  return {
    sheet: aSheet(), lot: { code: 'RS-250904-1', product: 'Smoked ring sausage with marjoram' },
    hazard: 'Growth of Clostridium perfringens and Clostridium botulinum from surviving spores',
    preparedAction: 'Hold the lot, chill it at once, find the cause, and ask the process authority before any release.',
    deviation: aDeviation(),
    readings: (chillFigure.series[0]?.points ?? []).slice(0, 10)
      .map(({ at: taken, value }) => reading({ at: taken, value: value.toFixed(1), what: 'core, middle of the rack' })),
    ...report,
  };
}
