import { isUnconfirmed, saySupport, type Source } from '@larderbook/haccp';

/** Where a figure comes from and what the plan says supports it, in one line; an unconfirmed figure says so. */
export const saySource = (source: Source): string =>
  [[source.citation, source.edition, isUnconfirmed(source) && 'not confirmed'].filter(Boolean).join(', '), ...saySupport(source)].join(
    '. ',
  );
