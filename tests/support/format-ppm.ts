import { asSpecies, decimalText, divide, type CuringSpecies, type Ratio } from '@larderbook/haccp';

/** "162.27 ppm" */
export const formatIngoing = ({ numerator, denominator }: Ratio, decimals = 2): string =>
  `${decimalText(divide(numerator * 10n ** BigInt(decimals), denominator, 'nearest'), decimals)} ppm`;

/** `formatPpmAs(80, 'NO₂', 'NaNO₂')` is "119.98 ppm as NaNO₂"; no rule adds up nitrite and nitrate. */
export function formatPpmAs(ppm: number, from: CuringSpecies, to: CuringSpecies, decimals = 2): string {
  const ratio = asSpecies(from, to);
  if (!ratio) return `no figure as ${to}`;
  return `${formatIngoing({ numerator: BigInt(ppm) * ratio.numerator, denominator: ratio.denominator }, decimals)} as ${to}`;
}
