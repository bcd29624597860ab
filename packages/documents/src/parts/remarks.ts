import { formatRead } from '@larderbook/haccp';
import type { AmendmentData, ClarificationData, ReadingData } from '../entry-data';
import type { Signed } from '../sheet-data';
import type { Telling } from '../page/telling';
import { given, words, type Paragraph } from '../page/words';

/** The old value is struck through and stays readable. */
export function amendmentInWords({ field, was, entered, now, why, by, at }: AmendmentData, telling: Telling): Paragraph {
  const { say } = telling;
  const isVoided = now === undefined;
  const what = field ? say(isVoided ? 'voided-field' : 'corrected-field', { field }) : say(isVoided ? 'voided' : 'corrected');
  return words(
    'small',
    { text: `${what}  ` },
    { text: was, strike: true, style: 'smallInk' },
    entered && ` (${signedIn(entered, telling)})`,
    now && { text: `  → ${now}`, style: 'smallStrong' },
    `.  ${why} (${signedIn({ by, at }, telling)})`,
  );
}

const signedIn = ({ by, at }: Signed, { clock }: Telling): string => `${by}, ${clock.dayAndTime(at)}`;

const clarificationInWords = ({ word, why, by, at }: ClarificationData, telling: Telling): Paragraph =>
  words(
    'small',
    { text: `${telling.say('clarified')}  ` },
    { text: word, style: 'smallStrong' },
    `.  ${why} (${signedIn({ by, at }, telling)})`,
  );

/** Struck through where no limit is judged by it. */
export const figureOf = ({ value, unit, isLeftOut, struck }: ReadingData & { struck?: string }): Paragraph =>
  words('strong', { text: formatRead({ value, unit }), strike: isLeftOut || struck !== undefined });

type Remarked = Pick<ReadingData, 'amendments' | 'clarifications' | 'note' | 'receivedAt' | 'sentBy'>;

/** Flags are not among the remarks: they are letters beside the time. */
export function remarksOn(entry: Remarked, telling: Telling): Paragraph[] {
  return given(
    entry.note && words('small', { text: telling.say('quoted', { words: entry.note }), style: 'smallInk' }),
    arrival(entry, telling),
    ...(entry.amendments ?? []).map((amendment) => amendmentInWords(amendment, telling)),
    ...(entry.clarifications ?? []).map((clarification) => clarificationInWords(clarification, telling)),
  );
}

function arrival({ receivedAt, sentBy: who }: Remarked, { clock, say }: Telling): Paragraph | undefined {
  if (receivedAt === undefined) return who === undefined ? undefined : words('small', say('entered-sent-by', { who }));
  const at = clock.dayAndTime(receivedAt);
  return words('small', who === undefined ? say('entered-at', { at }) : say('entered-at-sent-by', { at, who }));
}
