import {
  type CriticalLimit,
  type Figures,
  type Found,
  type Source,
  type Tell,
  type TellRemark,
  type TemperatureUnit,
  type Told,
  type Verdict,
} from '@larderbook/haccp';
import { byVoice } from '../by-voice';
import { limitTeller, type LimitTeller } from '../limits/limit-teller';
import type { LimitWords } from '../limits/limit-voice';
import type { Words } from '../say';
import type { Voice } from '../voice';
import { codedText, spoken, type Spoken } from './spoken';

export type Teller = { tell: Tell; tellRemark: TellRemark };

const tellers = byVoice<Teller>();

type VerdictWords = { verdicts: Words; limits: LimitWords };

export const teller = ({ verdicts, limits }: VerdictWords, voice: Voice): Teller =>
  tellers(verdicts, voice, () => newTeller(spoken(verdicts, voice), limitTeller(limits, voice)));

function newTeller(told: Spoken, { sayLimit }: LimitTeller): Teller {
  const tellRemark: TellRemark = (remark) => codedText(told, remark);
  return {
    tellRemark,
    tell: (verdict, limit) => ({
      ...tellVerdict(verdict, limit, told, tellRemark),
      limit: limit ? sayLimit(limit, unitIn(verdict)) : '',
    }),
  };
}

const NO_SOURCE: Source = { citation: '', edition: '', confirmed: false };

function tellVerdict(verdict: Verdict, limit: CriticalLimit | undefined, told: Spoken, tellRemark: TellRemark): Omit<Told, 'limit'> {
  const { kind, notes, still, probe, spare } = verdict;
  return {
    ...{ kind, still, probe, spare },
    measured: measuredOf(verdict, told),
    margin: partOf(verdict, 'margin', told),
    because: becauseOf(verdict, told),
    next: nextOf(verdict, told),
    notes: notes.map(tellRemark),
    source: limit?.source ?? NO_SOURCE,
    running: runningOf(verdict, told),
  };
}

type Part = 'measured' | 'margin' | 'because' | 'next';

const partOf = ({ finding, figures }: Found, part: Part, told: Spoken): string | undefined => told(`${finding}.${part}`, figures);

/** Other misses come first; a doubt also tells what would have been found without it. */
function measuredOf(verdict: Verdict, told: Spoken): string {
  const { also = [], butFor } = verdict;
  const beneath = butFor && ofFound(butFor, told);
  return [...also.map((one) => partOf(one, 'measured', told)), ofFound(verdict, told), beneath].filter(Boolean).join('; ');
}

const ofFound = ({ finding, figures, measure, parts }: Found & Pick<Verdict, 'parts'>, told: Spoken): string | undefined =>
  parts
    ? parts.flatMap((part) => (part.measure && told(`${part.measure}.measured`, part.figures)) || []).join(', ')
    : told(`${measure ?? finding}.measured`, figures);

/** Every missed stage is told, in the order of the process. */
function becauseOf(verdict: Verdict, told: Spoken): string {
  const { parts = [], also = [] } = verdict;
  const missed = verdict.kind === 'missed' ? parts.filter(({ kind }) => kind === 'missed') : [];
  const found = missed.length > 1 ? missed : [verdict];
  return [...found, ...also].flatMap((one) => partOf(one, 'because', told) ?? []).join(' ');
}

function nextOf(verdict: Verdict, told: Spoken): string | undefined {
  const { then, parts = [] } = verdict;
  if (then) return told(then.code, then.figures);
  const lastMissed = verdict.kind === 'missed' ? parts.findLast(({ kind }) => kind === 'missed') : undefined;
  return partOf(lastMissed ?? verdict, 'next', told);
}

function runningOf({ running }: Verdict, told: Spoken): Told['running'] {
  if (!running) return undefined;
  const { code, figures, ...at } = running;
  return { stage: codedText(told, { code: `${code}.stage`, figures }), bound: codedText(told, { code: `${code}.bound`, figures }), ...at };
}

/** A limit is told in the unit of its readings. */
function unitIn({ figures, parts = [], butFor }: Verdict): TemperatureUnit | undefined {
  const found = [figures, ...parts.map((part) => part.figures), butFor?.figures, ...(butFor?.parts ?? []).map((part) => part.figures)];
  return found.map((one) => one && unitAmong(one)).find((unit) => unit !== undefined);
}

function unitAmong(figures: Figures): TemperatureUnit | undefined {
  for (const figure of Object.values(figures)) {
    const quantity = typeof figure === 'object' && 'to' in figure ? figure.to : figure;
    if (typeof quantity === 'object' && 'unit' in quantity && (quantity.unit === '°F' || quantity.unit === '°C')) return quantity.unit;
  }
  return undefined;
}
