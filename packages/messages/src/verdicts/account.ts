import type { Account } from '@larderbook/contracts';
import type { Told } from '@larderbook/haccp';
import type { Words } from '../say';
import type { Voice } from '../voice';
import type { WordsOf } from '../words';
import { codedText, spoken } from './spoken';
import type { Teller } from './tell';

/** Puts into words what the book says of a case, one sentence after the other. */
export type TellAccount = (account: Account) => string;

/** @param words those of accounts, with whatever other words their codes are of */
export function accountTeller(words: Words & WordsOf<'accounts'>, { tell }: Teller, voice: Voice): TellAccount {
  const told = spoken(words, voice);
  const sentence = (one: Account[number]): string => {
    if (!('verdict' in one)) return codedText(told, one);
    const said = partOf[one.tells](tell(one.verdict));
    return one.point === undefined ? said : codedText(told, { code: 'of-point', figures: { point: one.point, said } });
  };
  return (account) => account.map(sentence).filter(Boolean).join(' ');
}

const partOf = {
  because: ({ because }: Told) => because,
  'because and notes': ({ because, notes }: Told) => [because, ...notes].join(' '),
  'because and next': ({ because, next = '' }: Told) => `${because} ${next}`.trim(),
  'next or because': ({ because, next }: Told) => next ?? because,
} as const;
