import type { DwellLimit } from '../limits/limit';
import { both, printedSeconds } from './printed';
import { fsisCooking } from './sources';
import { LONGEST_GAP_SECONDS } from './tolerated-gaps';

type PrintedMeatRow = { '°F': number; '°C': number; log5: string; log65: string; log7: string };
type Column = 'log5' | 'log65' | 'log7';

/**
 * Meat: °F, °C as printed, and the holding time for a 5-log, 6.5-log and 7-log reduction of *Salmonella*.
 * FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, December 2021:
 * 6.5 and 7-log Table 2, p. 35; 5-log Table 6, p. 59. Carried over row by row, never recomputed: the 7-log times are
 * not 7/6.5 of the 6.5-log times, and 58.4 and 59.5 °C are printed a tenth above the true conversion.
 */
export const meatRows: readonly PrintedMeatRow[] = [
  { '°F': 130, '°C': 54.4, log5: '86m', log65: '112m', log7: '121m' },
  { '°F': 131, '°C': 55, log5: '69m', log65: '89m', log7: '97m' },
  { '°F': 132, '°C': 55.6, log5: '55m', log65: '71m', log7: '77m' },
  { '°F': 133, '°C': 56.1, log5: '44m', log65: '56m', log7: '62m' },
  { '°F': 134, '°C': 56.7, log5: '35m', log65: '45m', log7: '47m' },
  { '°F': 135, '°C': 57.2, log5: '28m', log65: '36m', log7: '37m' },
  { '°F': 136, '°C': 57.8, log5: '22m', log65: '28m', log7: '32m' },
  { '°F': 137, '°C': 58.4, log5: '18m', log65: '23m', log7: '24m' },
  { '°F': 138, '°C': 58.9, log5: '14m', log65: '18m', log7: '19m' },
  { '°F': 139, '°C': 59.5, log5: '11m', log65: '15m', log7: '15m' },
  { '°F': 140, '°C': 60, log5: '9m', log65: '12m', log7: '12m' },
  { '°F': 141, '°C': 60.6, log5: '7m', log65: '9m', log7: '10m' },
  { '°F': 142, '°C': 61.1, log5: '6m', log65: '8m', log7: '8m' },
  { '°F': 143, '°C': 61.7, log5: '5m', log65: '6m', log7: '6m' },
  { '°F': 144, '°C': 62.2, log5: '4m', log65: '5m', log7: '5m' },
  { '°F': 145, '°C': 62.8, log5: '3m', log65: '4m', log7: '4m' },
  { '°F': 146, '°C': 63.3, log5: '130s', log65: '169s', log7: '182s' },
  { '°F': 147, '°C': 63.9, log5: '103s', log65: '134s', log7: '144s' },
  { '°F': 148, '°C': 64.4, log5: '82s', log65: '107s', log7: '115s' },
  { '°F': 149, '°C': 65, log5: '65s', log65: '85s', log7: '91s' },
  { '°F': 150, '°C': 65.6, log5: '52s', log65: '67s', log7: '72s' },
  { '°F': 151, '°C': 66.1, log5: '41s', log65: '54s', log7: '58s' },
  { '°F': 152, '°C': 66.7, log5: '33s', log65: '43s', log7: '46s' },
  { '°F': 153, '°C': 67.2, log5: '26s', log65: '34s', log7: '37s' },
  { '°F': 154, '°C': 67.8, log5: '21s', log65: '27s', log7: '29s' },
  { '°F': 155, '°C': 68.3, log5: '17s', log65: '22s', log7: '23s' },
  { '°F': 156, '°C': 68.9, log5: '14s', log65: '17s', log7: '19s' },
  { '°F': 157, '°C': 69.4, log5: '11s', log65: '14s', log7: '15s' },
  { '°F': 158, '°C': 70, log5: '0s', log65: '0s', log7: '0s' },
  { '°F': 159, '°C': 70.6, log5: '0s', log65: '0s', log7: '0s' },
  { '°F': 160, '°C': 71.1, log5: '0s', log65: '0s', log7: '0s' },
];

/** Cooked beef, roast beef and corned beef (9 CFR 318.17(a)(1)); recommended for other cooked meat. */
export const cookedMeat65Log: DwellLimit = meatLimit('log65', 'Table 2, p. 35, 6.5-log Salmonella');

/** Meat for which a 7-log reduction is planned. Product with any poultry in it takes the poultry tables instead. */
export const cookedMeat7Log: DwellLimit = meatLimit('log7', 'Table 2, p. 35, 7-log Salmonella');

/** Shelf-stable meat; elsewhere the plant must document why 5-log is enough (note 15 on p. 59). */
export const cookedMeat5Log: DwellLimit = meatLimit('log5', 'Table 6, p. 59, 5-log Salmonella');

function meatLimit(column: Column, place: string): DwellLimit {
  return {
    kind: 'dwell',
    rows: meatRows.map((row) => ({ at: both(row['°F'], row['°C']), seconds: printedSeconds(row[column]) })),
    longestGapSeconds: LONGEST_GAP_SECONDS.hold,
    source: fsisCooking(place),
  };
}
