import type { Source } from './source';

/** What whoever adopts a plan has on file for a figure, in their own words. */
export type Support = {
  /** Where they have read the figure in its source: edition and page. */
  read?: string;
  /** The scientific gap of the guideline now in force that the product stands in. */
  gap?: string;
  /** Scientific support of their own, and where it is filed. */
  own?: string;
};

/** An edition with its page, or what is filed and where, is not said in fewer letters. */
const FEWEST_LETTERS = 8;

/** Is there something in these words? Too few are as good as none. */
export const isSaid = (says: string | undefined): says is string => says !== undefined && says.trim().length >= FEWEST_LETTERS;

/** Nobody has read the figure in its source, and nobody has said what supports it instead. */
export const isUnconfirmed = ({ confirmed, support }: Source): boolean => !confirmed && !isSaid(support?.read) && !isSaid(support?.own);
