import type { Account } from '@larderbook/contracts';

/** The codes of an account, one after the other; a verdict by what it finds. */
export const codesOf = (account: Account = []): string[] => account.map((one) => ('code' in one ? one.code : one.verdict.finding));
