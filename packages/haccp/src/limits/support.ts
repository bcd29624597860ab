import type { Source } from './source';

/** On file with the adopter of a plan, in their own words. */
export type Support = {
  /** Edition and page where they read the figure. */
  read?: string;
  /** Scientific gap of the guideline now in force that the product falls in. */
  gap?: string;
  /** Their own scientific support, and where it is filed. */
  own?: string;
};

/** An edition with its page, or what is filed and where, takes more letters. */
const FEWEST_LETTERS = 8;

/** Too few words are as good as none. */
export const isSaid = (says: string | undefined): says is string => says !== undefined && says.trim().length >= FEWEST_LETTERS;

/** Neither read in its source nor supported otherwise. */
export const isUnconfirmed = ({ confirmed, support }: Source): boolean => !confirmed && !isSaid(support?.read) && !isSaid(support?.own);
