import type { Source } from '@larderbook/haccp';

/** Where a figure comes from, in one line; an unconfirmed figure says so. */
export const saySource = ({ citation, edition, confirmed }: Source): string =>
  [citation, edition, !confirmed && 'not confirmed'].filter(Boolean).join(', ');
