import { chillFigure, cookFigure } from './figure/curves.test-data';
import type { LotRecordData } from './lot-record-data';
import { aDeviation, aSheet, aVerdict, at, cooking, cooling, cure, house, nitrite, reading, tooSlow } from './samples.test-data';

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
