import { limitsIn } from './limits-in';
import { cooling, coolingOf1999, set } from './published/us-inspected-2021.json';

const [of1999, of2021] = [limitsIn(set, coolingOf1999), limitsIn(set, cooling)];

/** Fully or partly cooked, cured or not: 6.5 h in all. */
export const coolingUncured = of1999('cooling', 'cooling-any-1999');

/** Figures of the 1999 option 1. */
export const coolingUncured2021 = of2021('cooling', 'cooling-any');

/**
 * Begins within 90 min of cooking; chilling to 40 °F (4.4 °C) before shipping is another limit. Over 1 h between 120
 * and 80 °F makes compliance less certain: plan `coolingFromCookingStrict` then.
 */
export const coolingFromCooking = of1999('cooling', 'cooling-120-55-1999');

/** The hour between 120 and 80 °F is a limit. */
export const coolingFromCookingStrict = of2021('cooling', 'cooling-120-55');

/** With at least 100 ppm ingoing sodium nitrite: 15 h in all. */
export const coolingCured = of1999('cooling', 'cooling-cured-1999');
