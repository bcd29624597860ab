import { sayRead } from '@larderbook/haccp';
import type { AmendmentData, ClarificationData, ReadingData } from '../entry-data';
import type { Signed } from '../sheet-data';
import type { WallClock } from '../page/wall-clock';
import { given, words, type Paragraph } from '../page/words';

/** A mistake and its correction: the old value struck but readable, who entered it when, the new one, why, who, when. */
export function amendmentInWords({ field, was, entered, now, why, by, at }: AmendmentData, clock: WallClock): Paragraph {
  const what = [now === undefined ? 'Voided' : 'Corrected', field].filter(Boolean).join(' ');
  return words(
    'small',
    { text: `${what}:  ` },
    { text: was, strike: true, style: 'smallInk' },
    entered && ` (${signedIn(entered, clock)})`,
    now && { text: `  → ${now}`, style: 'smallStrong' },
    `.  ${why} (${signedIn({ by, at }, clock)})`,
  );
}

const signedIn = ({ by, at }: Signed, clock: WallClock): string => `${by}, ${clock.dayAndTime(at)}`;

/** What somebody said a reading was, why, who, when. */
const clarificationInWords = ({ word, why, by, at }: ClarificationData, clock: WallClock): Paragraph =>
  words('small', { text: 'Clarified:  ' }, { text: word, style: 'smallStrong' }, `.  ${why} (${signedIn({ by, at }, clock)})`);

/** A reading as it stands, struck through where it is left out of every judgement. */
export const figureOf = ({ value, unit, isLeftOut, struck }: ReadingData & { struck?: string }): Paragraph =>
  words('strong', { text: sayRead({ value, unit }), strike: isLeftOut || struck !== undefined });

type Remarked = Pick<ReadingData, 'amendments' | 'clarifications' | 'note' | 'receivedAt' | 'sentBy'>;

/** What stands under an entry: its note, how it arrived, what was amended, what was said of it. Its flags are letters beside its time. */
export function remarksOn(entry: Remarked, clock: WallClock): Paragraph[] {
  return given(
    entry.note && words('small', { text: `“${entry.note}”`, style: 'smallInk' }),
    arrival(entry, clock),
    ...(entry.amendments ?? []).map((amendment) => amendmentInWords(amendment, clock)),
    ...(entry.clarifications ?? []).map((clarification) => clarificationInWords(clarification, clock)),
  );
}

function arrival({ receivedAt, sentBy }: Remarked, clock: WallClock): Paragraph | undefined {
  if (receivedAt === undefined && sentBy === undefined) return undefined;
  const when = receivedAt === undefined ? '' : ` ${clock.dayAndTime(receivedAt)}`;
  return words('small', sentBy === undefined ? `Entered${when}` : `Entered${when}, sent by ${sentBy}`);
}
