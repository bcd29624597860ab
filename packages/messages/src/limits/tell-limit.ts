import {
  asGiven,
  decimalText,
  type CriticalLimit,
  type FigureLimit,
  type LimitKind,
  type LimitOf,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { codeOf } from '../code-of';
import type { LimitVoice } from './limit-voice';
import { figureOf, tellBounds, tellRange } from './tell-bounds';
import { tellBandTime, tellCooling, tellDwell } from './tell-stages';
import { tellDegreeHours, tellFreezing, tellFreezingInShort, tellLethality } from './tell-whole';

type Telling<Limit> = {
  /** One line. Curves are told in the unit of the readings. */
  line: (limit: Limit, voice: LimitVoice, unit: TemperatureUnit) => string;
  /** Where a line may be long. */
  inShort?: (limit: Limit, voice: LimitVoice) => string;
  /** A word or two; undefined where the figures say it. */
  about: (limit: Limit, voice: LimitVoice) => string | undefined;
};

const tellings: { [K in LimitKind]: Telling<LimitOf<K>> } = {
  range: {
    line: tellRange,
    about: ({ measured }, { say }) =>
      measured === 'temperature' ? say('about-temperature') : measured === 'percent' ? undefined : measured,
  },
  figure: { line: tellFigure, about: ({ of }, { name }) => name(of) },
  concentration: {
    line: ({ printed, min, max, countedAs }, voice) => {
      const amount = min === undefined ? undefined : voice.quantity(figureOf(min, 2, 'ppm'));
      const least = amount !== undefined && countedAs ? voice.say('counted-as', { amount, ion: countedAs }) : amount;
      return tellBounds({ min: least, max: max === undefined ? undefined : printed }, voice);
    },
    about: ({ substance }, { say }) => say(codeOf('substance', substance)),
  },
  dwell: { line: (limit, voice, unit) => tellDwell(limit, unit, voice), about: (_, { say }) => say('about-held') },
  cooling: { line: (limit, voice, unit) => tellCooling(limit, unit, voice), about: (_, { say }) => say('about-cooling') },
  bandTime: { line: (limit, voice, unit) => tellBandTime(limit, unit, voice), about: (_, { say }) => say('about-time-between') },
  lethality: { line: (limit, voice, unit) => tellLethality(limit, unit, voice), about: (_, { say }) => say('about-kill') },
  growth: {
    line: ({ log10, species }, { say, number }) => say(codeOf('growth', species), { logs: number(decimalText(log10, 2)) }),
    about: (_, { say }) => say('about-growth'),
  },
  degreeHours: { line: tellDegreeHours, about: (_, { say }) => say('about-degree-hours') },
  weightLoss: {
    line: ({ percent }, { say }) => say('weight-lost', { percent: asGiven(percent, '%') }),
    about: (_, { say }) => say('about-weight-lost'),
  },
  freezing: { line: tellFreezing, inShort: tellFreezingInShort, about: (_, { say }) => say('about-frozen') },
  attestation: { line: ({ statement }, { name }) => name(statement), about: (_, { say }) => say('about-answer') },
};

export const tellingOf = <Limit extends CriticalLimit>({ kind }: Limit): Telling<Limit> => tellings[kind] as unknown as Telling<Limit>;

/** "fat ≤ 30 %" */
function tellFigure({ of, unit, min, max, signs, printed, advises }: FigureLimit, voice: LimitVoice): string {
  const what = voice.name(of);
  if (printed !== undefined) return `${what} ${printed}`;
  const amountOf = (thousandths: number | undefined): string | undefined =>
    thousandths === undefined ? undefined : amountIn(thousandths, unit, voice);
  const figure = `${what} ${tellBounds({ min: amountOf(min), max: amountOf(max), signs }, voice)}`;
  return advises ? voice.say('advised-only', { figure }) : figure;
}

/** The name stands before the figure: pH and water activity are not named again. */
function amountIn(thousandths: number, unit: FigureLimit['unit'], { number, quantity }: LimitVoice): string {
  const value = decimalText(thousandths, 3);
  if (unit === 'pH' || unit === 'aw') return number(value);
  return unit === '°C·h' || unit === '°F·h' ? `${number(value)} ${unit}` : quantity({ value, unit });
}
