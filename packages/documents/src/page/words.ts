import type { VerdictKind } from '@larderbook/haccp';
import type { StyleName } from './theme';

/** A shape set like a letter: of a verdict, or the flag of an odd entry. */
export type Mark = VerdictKind | 'flag';

/** A stretch of text in one style, or a shape. */
export type Span = { text: string; style?: StyleName; strike?: boolean } | { mark: Mark };

/** Words set together; `style` rules the line height and whatever span has no style of its own. */
export type Paragraph = { style: StyleName; spans: Span[]; align?: 'left' | 'right' };

export function words(style: StyleName, ...spans: (Span | string | undefined)[]): Paragraph {
  const given = spans.filter((span) => span !== undefined && span !== '');
  return { style, spans: given.map((span) => (typeof span === 'string' ? { text: span } : (span as Span))) };
}

export function toTheRight(paragraph: Paragraph): Paragraph {
  return { ...paragraph, align: 'right' };
}

/** The paragraphs that were given; what a record leaves out takes no line. */
export function given(...paragraphs: (Paragraph | undefined | false | '')[]): Paragraph[] {
  return paragraphs.filter((paragraph) => !!paragraph) as Paragraph[];
}
