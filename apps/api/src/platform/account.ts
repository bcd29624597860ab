import type { Account } from '@larderbook/contracts';
import type { Coded, Figure, Figures } from '@larderbook/haccp';
import { accountTeller, type ParametersOf, type TellAccount, type Voice, type WordsOf } from '@larderbook/messages';
import { wordsTogether } from '@larderbook/messages/all';
import { tellerIn } from './tell';

type Texts = WordsOf<'accounts'> & WordsOf<'review-findings'>;
type Names = WordsOf<'entries'> & WordsOf<'limits'> & WordsOf<'items'> & WordsOf<'review-findings'>;

type Takes<Parameter> = [Parameter] extends [number] ? number : [Parameter] extends [string] ? string : Figure;
type FiguresOf<Text extends string> = { [Name in keyof ParametersOf<Text>]: Takes<ParametersOf<Text>[Name]> };
type Given<Text extends string> = keyof ParametersOf<Text> extends never ? [] : [FiguresOf<Text>];

/** A sentence of an account: a code that it does not have, or a figure that it lacks, is a type error. */
export const sentence = <Code extends keyof Texts & string>(code: Code, ...[figures]: Given<Texts[Code]>): Coded =>
  figures === undefined ? { code } : { code, figures: figures as Figures };

/** What something is called within a sentence. */
export const named = <Code extends keyof Names & string>(code: Code, ...[figures]: Given<Names[Code]>) =>
  (figures === undefined ? { code } : { code, figures }) as Coded & { figures?: Record<string, string | number> };

const words = wordsTogether('entries', 'limits', 'items', 'review-findings', 'accounts');

/** Tells accounts as somebody reads them. */
export const accountsIn = (voice: Voice): TellAccount => accountTeller(words[voice.language], tellerIn(voice), voice);

/** What somebody wrote, within an account of other sentences: people do not always end one. */
export const ended = (said: string): string => (/[.!?]$/.test(said) ? said : `${said}.`);

/** Words as somebody wrote them, in the place of an account. */
export const asWorded = (said: string): Account => [sentence('as-worded', { said })];
