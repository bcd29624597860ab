import { degreeHoursFahrenheit } from '../kinds/degree-hours/fermentation-limit';
import type { FigureUnit } from '../kinds/figure/figure-limit';
import { isOfKind } from '../kinds/of-kind';
import type { CriticalLimit } from '../limits/limit';
import * as curing from './curing';
import * as foodCode from './food-code';
import * as comeUp from './fsis-come-up';
import { frozenByCentre, atMostOneLogGrown } from './fsis-processes';
import * as meat from './fsis-meat';
import { cookedPoultry, cookedPoultry7Log } from './fsis-poultry';
import * as stabilization from './fsis-stabilization';
import type { LimitSet } from './limit-set';
import { withPublishedConditions } from './published-conditions';
import { receivedChilled } from './receiving';
import { limitSets, usualSetOf } from './sets';

/** `key` never changes. A row from abroad names its set. */
export type CatalogueEntry = { key: string; set?: string; title: string; limit: CriticalLimit };

const entry = (key: string, title: string, limit: CriticalLimit, set?: string): CatalogueEntry => ({
  key,
  set,
  title,
  limit: withPublishedConditions(limit),
});

/**
 * A limit set is a reference: the plan must be validated, and local codes, the inspector and a licensed process
 * authority decide.
 */
const firstWritten: readonly CatalogueEntry[] = [
  entry('received-chilled', 'Chilled meat at receipt', receivedChilled),
  entry('cooked-meat-6.5-log', 'Cooked meat, 6.5-log Salmonella', meat.cookedMeat65Log),
  entry('cooked-meat-7-log', 'Cooked meat, 7-log Salmonella', meat.cookedMeat7Log),
  entry('cooked-meat-5-log', 'Shelf-stable meat, 5-log Salmonella', meat.cookedMeat5Log),
  entry('cooked-poultry-7-log', 'Cooked poultry or mixed species, fat unknown, 7-log', cookedPoultry7Log),
  entry('cooked-chicken-7-log', 'Cooked chicken, fat unknown, 7-log', cookedPoultry('chicken')),
  entry('cooked-turkey-7-log', 'Cooked turkey, fat unknown, 7-log', cookedPoultry('turkey')),
  entry('come-up-6-h', 'Come-up through 50 to 130 °F', comeUp.comeUpWithinSixHours),
  entry('cooling-1999-1', 'Cooling, any product', stabilization.coolingUncured),
  entry('cooling-2021-1', 'Cooling, any fully cooked product', stabilization.coolingUncured2021),
  entry('cooling-1999-2', 'Cooling from 120 to 55 °F', stabilization.coolingFromCooking),
  entry('cooling-2021-2', 'Cooling from 120 to 55 °F in two stages', stabilization.coolingFromCookingStrict),
  entry('cooling-1999-3', 'Slow cooling, cured product', stabilization.coolingCured),
  entry('roast-food-code', 'Whole roast, retail', foodCode.roastFoodCode),
  entry('intact-meat-food-code', 'Intact meat, retail', foodCode.intactMeatFoodCode),
  entry('ground-meat-food-code', 'Comminuted or non-intact meat, retail', foodCode.groundMeatFoodCode),
  entry('poultry-food-code', 'Poultry and stuffed food, retail', foodCode.poultryFoodCode),
  entry('reheated-food-code', 'Reheated for hot holding, retail', foodCode.reheatedFoodCode),
  entry('cooling-food-code', 'Cooling, retail', foodCode.coolingFoodCode),
  entry('cold-holding', 'Cold holding', foodCode.coldHolding),
  entry('hot-holding', 'Hot holding', foodCode.hotHolding),
  entry('nitrite-comminuted', 'Nitrite in chopped meat', curing.nitriteComminuted),
  entry('nitrite-comminuted-refrigerated', 'Nitrite in chopped meat, with a minimum', curing.nitriteComminutedRefrigerated),
  entry('nitrite-pumped', 'Nitrite in pumped, massaged or immersed meat', curing.nitritePumped),
  entry('nitrite-dry-cured', 'Nitrite in dry-cured meat', curing.nitriteDryCured),
  entry('nitrate-comminuted', 'Nitrate in chopped meat', curing.nitrateComminuted),
  entry('nitrate-pumped', 'Nitrate in pumped or immersed meat', curing.nitratePumped),
  entry('nitrate-dry-cured', 'Nitrate in dry-cured meat', curing.nitrateDryCured),
  entry('erythorbate-comminuted', 'Erythorbate in chopped meat', curing.erythorbateComminuted),
  entry('erythorbate-pumped', 'Erythorbate in pumped meat', curing.erythorbatePumped),
  entry('phosphate', 'Phosphate', curing.phosphate),
  entry('degree-hours', 'Fermentation by degree-hours to pH 5.3', { kind: 'degreeHours', ...degreeHoursFahrenheit }),
  entry('growth-perfringens', 'Growth while cooling, a screening', atMostOneLogGrown),
  entry('trichinae-frozen-centre', 'Pork frozen against trichinae, by its centre', frozenByCentre),
];

/** Under `set/row`; of analysed figures only those that a meter or a letter gives. */
const offeredBy = ({ id, title, rows }: LimitSet): CatalogueEntry[] =>
  rows.flatMap(({ id: row, title: about, limit }) =>
    isOfKind(limit, 'figure') && !analysed.includes(limit.unit) ? [] : [entry(`${id}/${row}`, about, limit, title)],
  );

const analysed: readonly FigureUnit[] = ['%', 'ratio', 'aw', 'pH', 'cfu/g'];

const usualSets = new Set<string>(Object.values(usualSetOf));
const abroad = limitSets.filter(({ id, jurisdiction }) => !jurisdiction.startsWith('US,') && usualSets.has(id));

export const catalogue: readonly CatalogueEntry[] = [...firstWritten, ...abroad.flatMap(offeredBy)];
