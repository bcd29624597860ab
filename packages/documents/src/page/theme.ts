import type { FaceName } from './typefaces';

/** The accent stays legible as a grey: nothing is said by colour alone. */
export const inks = { ink: '#1b1a17', soft: '#57534b', hairline: '#c4beb1', accent: '#1d4f60', paper: '#ffffff' };
export type Ink = keyof typeof inks;

export type Style = { face: FaceName; size: number; leading: number; ink: Ink };

/** Points. A sheet is read at arm's length, often in poor light: nothing is below 7. */
export const styles = {
  title: { face: 'display', size: 27, leading: 31, ink: 'ink' },
  longTitle: { face: 'display', size: 19, leading: 23, ink: 'ink' },
  product: { face: 'serif', size: 13.5, leading: 18, ink: 'ink' },
  heading: { face: 'serifStrong', size: 13, leading: 17, ink: 'ink' },
  subheading: { face: 'strong', size: 9, leading: 12, ink: 'ink' },
  body: { face: 'text', size: 9, leading: 12, ink: 'ink' },
  strong: { face: 'strong', size: 9, leading: 12, ink: 'ink' },
  slanted: { face: 'slanted', size: 9, leading: 12, ink: 'ink' },
  time: { face: 'text', size: 9, leading: 12, ink: 'ink' },
  number: { face: 'strong', size: 9, leading: 17, ink: 'accent' },
  day: { face: 'strong', size: 7.6, leading: 11, ink: 'accent' },
  small: { face: 'text', size: 7.6, leading: 10, ink: 'soft' },
  smallInk: { face: 'text', size: 7.6, leading: 10, ink: 'ink' },
  smallStrong: { face: 'strong', size: 7.6, leading: 10, ink: 'ink' },
  label: { face: 'text', size: 7.4, leading: 10, ink: 'soft' },
  badge: { face: 'strong', size: 7.6, leading: 10, ink: 'paper' },
  columnHead: { face: 'strong', size: 7.2, leading: 9.5, ink: 'soft' },
  caution: { face: 'serifSlanted', size: 7.2, leading: 9.5, ink: 'soft' },
} as const satisfies Record<string, Style>;
export type StyleName = keyof typeof styles;

/** Widths in points. Only a missed limit has the heavy line. */
export const lines = {
  hair: { width: 0.4, ink: 'hairline' },
  thin: { width: 0.5, ink: 'soft' },
  flow: { width: 0.8, ink: 'ink' },
  strike: { width: 0.7, ink: 'ink' },
  firm: { width: 0.9, ink: 'ink' },
  limit: { width: 0.7, ink: 'ink' },
  heavy: { width: 2, ink: 'ink' },
  margin: { width: 0.6, ink: 'accent' },
} as const satisfies Record<string, { width: number; ink: Ink }>;
export type LineName = keyof typeof lines;
