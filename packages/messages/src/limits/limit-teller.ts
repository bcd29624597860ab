import type {
  Condition,
  CriticalLimit,
  DwellRow,
  Frequency,
  InstrumentErrors,
  LethalitySet,
  LimitCondition,
  Piece,
  Source,
  TemperatureUnit,
} from '@larderbook/haccp';
import type { ClockStart } from '@larderbook/contracts';
import { byVoice } from '../by-voice';
import type { Voice } from '../voice';
import { limitVoice, type LimitWords, type SayLimits } from './limit-voice';
import { tellClockStart, tellErrors, tellFrequency, tellPiece } from './tell-beside';
import { tellCondition, tellConditions, tellSupport } from './tell-conditions';
import { tellingOf } from './tell-limit';
import { anyRow, tellRow } from './tell-stages';
import { tellSet } from './tell-whole';

export type LimitTeller = {
  say: SayLimits;
  /** One line. Curves are told in the unit of the readings. */
  sayLimit(limit: CriticalLimit, unit?: TemperatureUnit): string;
  /** A long table by its ends. */
  sayInShort(limit: CriticalLimit, unit?: TemperatureUnit): string;
  /** One line for each unit its figures are printed in. */
  formatPrinted(limit: CriticalLimit): string[];
  /** A word or two; undefined where the figures say it. */
  formatAbout(limit: CriticalLimit): string | undefined;
  /** Translates a known name, or what a published row says, and leaves anything else as it is. */
  sayName(name: string): string;
  saySet(set: LethalitySet): string;
  /** "Canada, Québec" */
  sayWhere(where: { jurisdiction?: string; place?: string }): string;
  sayRow(row: DwellRow, unit: TemperatureUnit): string;
  sayAnyRow(rows: readonly DwellRow[], unit: TemperatureUnit): string;
  sayCondition(condition: Condition): string;
  sayConditions(conditions?: readonly LimitCondition[]): string[];
  saySupport(source: Source): string[];
  sayPiece(piece: Piece): string;
  sayErrors(errors: InstrumentErrors): string[];
  sayFrequency(frequency: Frequency): string;
  sayClockStart(start: ClockStart): string;
};

const tellers = byVoice<LimitTeller>();

export const limitTeller = (words: LimitWords, voice: Voice): LimitTeller => tellers(words, voice, () => newTeller(words, voice));

function newTeller(words: LimitWords, own: Voice): LimitTeller {
  const voice = limitVoice(words, own);
  const { say } = voice;
  const sayLimit: LimitTeller['sayLimit'] = (limit, unit = '°F') => tellingOf(limit).line(limit, voice, unit);
  return {
    say,
    sayLimit,
    sayInShort: (limit, unit) => tellingOf(limit).inShort?.(limit, voice) ?? sayLimit(limit, unit),
    formatPrinted: (limit) => [...new Set([sayLimit(limit, '°F'), sayLimit(limit, '°C')])],
    formatAbout: (limit) => tellingOf(limit).about(limit, voice),
    sayName: voice.name,
    saySet: (set) => tellSet(set, voice),
    sayWhere: ({ jurisdiction, place }) => [jurisdiction, place].flatMap((each) => (each ? [voice.name(each)] : [])).join(', '),
    sayRow: (row, unit) => tellRow(row, unit, voice),
    sayAnyRow: (rows, unit) =>
      anyRow(
        rows.map((row) => tellRow(row, unit, voice)),
        voice,
      ),
    sayCondition: (condition) => tellCondition(condition, voice),
    sayConditions: (conditions = []) => tellConditions(conditions, voice),
    saySupport: (source) => tellSupport(source, say),
    sayPiece: (piece) => tellPiece(piece, say),
    sayErrors: (errors) => tellErrors(errors, say),
    sayFrequency: (frequency) => tellFrequency(frequency, say),
    sayClockStart: (start) => tellClockStart(start, say),
  };
}
