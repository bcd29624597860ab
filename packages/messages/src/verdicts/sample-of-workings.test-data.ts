import type { Figures, Quantity } from '@larderbook/haccp';

const minutes = (count: number) => ({ value: String(count * 60_000), unit: 'ms' as const });
const a = (value: string, unit: Quantity['unit']) => ({ value, unit });

/** A figure for each name that a line of a working can ask for. */
export const sampleOfWorkings: Figures = {
  ...{ figure: a('130', '°F'), bound: a('41', '°F'), base: a('60', '°F'), at: { at: 3_600_000 }, from: { at: 0 }, to: { at: 5_400_000 } },
  ...{ time: minutes(20), allowed: minutes(90), took: minutes(80), gap: minutes(15), most: minutes(60), count: 3, number: 1 },
  ...{ sign: '≤', band: { from: a('50', '°F'), to: a('130', '°F') }, stage: { from: a('130', '°F'), to: a('80', '°F') } },
  ...{ substance: { code: 'sodium nitrite' }, name: 'Pepper', weight: a('25', 'g'), error: a('1', 'g'), ion: 'NO₂', code: '26061-1' },
  ...{ least: a('50', 'ppm'), printed: '80 mg/kg', found: { code: 'in time' }, row: { code: '145 °F for 4 min' }, pH: a('5.3', 'pH') },
  ...{ t1: a('120', '°F'), t2: a('79', '°F'), chiller: a('35', '°F'), set: 'Salmonella', authority: 'A. Reed, letter 7' },
  ...{ percent: a('35', '%'), kind: { code: 'Gap' }, first: a('140', '°F'), last: a('139', '°F'), probe: 'C', version: '1' },
  ...{ logs: a('5.5', 'log10'), d: a('1.7', 'min'), reference: a('60', '°C'), z: a('5.56', '°C'), standing: 'unconfirmed' },
  ...{ estimate: { code: '1 to 2 log' }, nitrite: a('150', 'ppm'), erythorbate: a('547', 'ppm'), cooling: { code: 'slowly' } },
  ...{ target: a('80', '°F'), best: { code: 'in about 2 h' }, earliest: { code: 'in about 1 h' }, latest: { code: 'perhaps never' } },
  when: { code: 'in about 3 h' },
};
