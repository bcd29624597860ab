import {
  asGiven,
  degreesOf,
  freezingRows,
  nameOfSet,
  printedIn,
  timeOf,
  type DegreeHoursLimit,
  type FreezingLimit,
  type FreezingRow,
  type LethalityLimit,
  type TemperatureUnit,
} from '@larderbook/haccp';
import { figureOf, tellBoth } from './tell-bounds';
import type { LimitVoice } from './limit-voice';

/** "≤ 1,200 °F·h below 90 °F, ≤ 1,000 °F·h up to 100 °F, ≤ 900 °F·h above it, counted over 60 °F until pH 5.3" */
export function tellDegreeHours({ base, pH, classes }: DegreeHoursLimit, { say, number }: LimitVoice): string {
  const said = classes.map(({ top, isTopIncluded, most: allowed }) => {
    const most = `${number(String(allowed))} ${base.unit}·h`;
    if (!top) return classes.length === 1 ? `≤ ${most}` : say('degree-hours-above', { most });
    return say(isTopIncluded ? 'degree-hours-up-to' : 'degree-hours-below', { most, top: degreesOf(top) });
  });
  return say('degree-hours-counted', { classes: said.join(', '), base: degreesOf(base), acid: figureOf(pH.thousandths, 3, 'pH') });
}

/** A set the book does not know is called as it was written. */
export function tellSet(set: LethalityLimit['set'], { say, name }: LimitVoice): string {
  const named = nameOfSet(set);
  return typeof named === 'string' ? name(named) : (say as (code: string) => string)(named.code);
}

/** Kill is never told without the parameters it is worked out by. */
export function tellLethality({ set, log10, floor }: LethalityLimit, unit: TemperatureUnit, voice: LimitVoice): string {
  const { say, number } = voice;
  return say('kill-at-least', {
    logs: number(figureOf(log10, 2, 'log10').value),
    set: tellSet(set, voice),
    minutes: asGiven(Number(set.minutesPerLog.toPrecision(4)), 'min'),
    reference: asGiven(set.referenceCelsius, '°C'),
    z: asGiven(set.zCelsius, '°C'),
    floor: printedIn(floor, unit),
  });
}

/** "≥ 20 days at or below 5 °F (-15 °C) or …, in the freezer, 6 in thick" */
export function tellFreezing(limit: FreezingLimit, voice: LimitVoice): string {
  const { say } = voice;
  const rows = frozenRows(limit, voice);
  return rows.length === 0
    ? say('no-row')
    : tellFrozenRows(
        limit,
        rows.reduce((before, row) => say('frozen-row-or', { rows: before, row })),
        voice,
      );
}

/** A long table by its ends, so that value and verdict stay in sight. */
export function tellFreezingInShort(limit: FreezingLimit, voice: LimitVoice): string {
  const rows = frozenRows(limit, voice);
  const [first = '', last = ''] = [rows[0], rows.at(-1)];
  if (rows.length < 4) return tellFreezing(limit, voice);
  return tellFrozenRows(limit, voice.say('frozen-rows-in-short', { first, last, count: rows.length }), voice);
}

const frozenRows = ({ read }: FreezingLimit, voice: LimitVoice): string[] =>
  (freezingRows(read) ?? []).map((row) => tellFrozen(row, voice));

function tellFrozenRows({ read }: FreezingLimit, any: string, { say }: LimitVoice): string {
  if (read.what === 'centre') return say('frozen-centre', { rows: any });
  const { value, unit } = read.thickness;
  return say('frozen-freezer', { rows: any, thickness: asGiven(value, unit) });
}

function tellFrozen({ at, hours }: FreezingRow, voice: LimitVoice): string {
  const time = hours % 24 === 0 ? asGiven(hours / 24, 'days') : timeOf(hours * 3_600_000);
  return voice.say('frozen-row', { time, at: tellBoth(at, voice) });
}
