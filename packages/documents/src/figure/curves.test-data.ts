import type { FigureData } from '../lot-record-data';
import { at } from '../samples.test-data';

const minute = 60_000;
const loaded = at(4, 8, 10);

/** A core warming towards 150 °F in four hours; the lower rack is a little colder. */
function warmed(taken: number, share = 1): number {
  const part = (taken - loaded) / (235 * minute);
  return Math.round((41 + 112 * (1 - Math.exp(-2.9 * part)) * share + 3 * part) * 10) / 10;
}

const everyMinute = Array.from({ length: 236 }, (_each, index) => loaded + index * minute);
const chilled = [
  148, 139, 129.8, 122, 114.5, 107.2, 100.4, 94.1, 88.3, 83, 78.2, 73.4, 68.4, 63.9, 59.8, 56.1, 52.8, 49.9, 47.3, 45, 43, 41.4, 39.9,
].map((value, index) => ({ at: at(4, 11, 55) + index * 15 * minute, value }));

export const cookFigure: FigureData = {
  title: 'Core temperature, cooking',
  unit: '°F',
  series: [
    { label: 'probe 1, thickest link', points: everyMinute.map((taken) => ({ at: taken, value: warmed(taken) })) },
    { label: 'probe 2, lower rack', points: everyMinute.map((taken) => ({ at: taken, value: warmed(taken, 0.965) })) },
  ],
  limits: [
    { value: 145, label: '≥ 145 °F for 4 min' },
    { value: 50, label: 'come-up from 50 °F' },
    { value: 130, label: 'to 130 °F' },
  ],
  stages: [
    {
      label: 'Come-up, 50 → 130 °F',
      spent: '1 h 56 min of 6 h',
      from: at(4, 8, 17),
      to: at(4, 10, 13),
      deadline: at(4, 14, 17),
    },
  ],
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
export const chillFigure: FigureData = {
  title: 'Core temperature, chilling',
  unit: '°F',
  series: [{ label: 'probe 1, middle of the rack', points: chilled }],
  limits: [
    { value: 130, label: '130 °F', band: [129, 131] },
    { value: 80, label: '≤ 80 °F within 1.5 h', band: [79, 81] },
    { value: 40, label: '≤ 40 °F within 5 h more', band: [39, 41] },
  ],
  crossings: [
    { label: '130 °F', value: 130, after: at(4, 12, 10), by: at(4, 12, 25), straight: at(4, 12, 24) },
    { label: '80 °F', value: 80, after: at(4, 14, 10), by: at(4, 14, 25), straight: at(4, 14, 19), chilled: at(4, 14, 18) },
  ],
  surroundings: [at(4, 11, 55), at(4, 14, 0), at(4, 17, 25)].map((taken) => ({ at: taken, value: 33 })),
  stages: [
    {
      label: '130 → 80 °F',
      spent: '2 h 15 min of 1 h 30 min',
      from: at(4, 12, 10),
      to: at(4, 14, 25),
      deadline: at(4, 13, 40),
      missed: true,
    },
    { label: '80 → 40 °F', spent: '3 h 0 min of 5 h', from: at(4, 14, 25), to: at(4, 17, 25), deadline: at(4, 19, 25) },
  ],
};
