import { limitsIn } from './limits-in';
import { meat } from './published/fsis-cooking-tables.json';
import { cooking, set } from './published/us-inspected-2021.json';

const limit = limitsIn({ ...set, holds: { meat } }, cooking);

/** Cooked beef, roast beef and corned beef (9 CFR 318.17(a)(1)); recommended for other cooked meat. */
export const cookedMeat65Log = limit('dwell', 'cooked-meat-6.5-log');

/** Product with any poultry takes the poultry tables instead. */
export const cookedMeat7Log = limit('dwell', 'cooked-meat-7-log');

/** Shelf-stable meat; elsewhere the plant must document why 5-log is enough (note 15 on p. 59). */
export const cookedMeat5Log = limit('dwell', 'cooked-meat-5-log');
