import { limitsIn } from './limits-in';
import { cooking, holding, set } from './published/us-retail-2022.json';

const [cooked, held] = [limitsIn(set, cooking), limitsIn(set, holding)];

/** Whole roasts, cured ones (ham) included; the hold may include the rise after the oven. */
export const roastFoodCode = cooked('dwell', 'roast');

/** Intact meat, fish, eggs to order. */
export const intactMeatFoodCode = cooked('dwell', 'cook-intact');

/** Comminuted, injected or tenderised meat. "Less than 1 second" means one reading at or above. */
export const groundMeatFoodCode = cooked('dwell', 'cook-comminuted');

/** Poultry, wild game, stuffed food. "Less than 1 second" means one reading at or above. */
export const poultryFoodCode = cooked('dwell', 'cook-poultry');

export const reheatedFoodCode = cooked('dwell', 'reheat-hot-holding');

/** The second bound counts from the first one's start. */
export const coolingFoodCode = held('cooling', 'cooling-any');

export const coldHolding = held('range', 'cold-holding');
export const hotHolding = held('range', 'hot-holding');
