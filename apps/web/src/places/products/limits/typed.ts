import { decimalText, scaled, type PrintedTemperature } from '@larderbook/haccp';
import { numberOf } from '../../../ui/keypad-text';

/** In °F, °C or both, as typed. */
export type PrintedText = { '°F': string; '°C': string };

export const noPrinted: PrintedText = { '°F': '', '°C': '' };

/** `count` is in the smallest step. */
export const typed = (count: number | undefined, decimals: number): string => (count === undefined ? '' : decimalText(count, decimals));

/** In the smallest step; undefined where it is no such number. */
export const counted = (text: string, decimals: number): number | undefined => scaled(numberOf(text) ?? NaN, decimals);

export const printedText = (printed: PrintedTemperature): PrintedText => ({ '°F': typed(printed['°F'], 2), '°C': typed(printed['°C'], 2) });

export const printedOf = (text: PrintedText) => ({ '°F': counted(text['°F'], 2), '°C': counted(text['°C'], 2) });
