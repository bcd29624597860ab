import type { VerdictKind } from '@larderbook/haccp';
import type { StyleName } from './theme';

export type Mark = VerdictKind | 'flag';

export type Span = { text: string; style?: StyleName; strike?: boolean } | { mark: Mark };

/** `style` sets the line height, and any span without its own style. */
export type Paragraph = { style: StyleName; spans: Span[]; align?: 'left' | 'right' };

export function words(style: StyleName, ...spans: (Span | string | undefined)[]): Paragraph {
  const given = spans.filter((span) => span !== undefined && span !== '');
  return { style, spans: given.map((span) => (typeof span === 'string' ? { text: span } : (span as Span))) };
}

export function toTheRight(paragraph: Paragraph): Paragraph {
  return { ...paragraph, align: 'right' };
}

/** What a record leaves out takes no line. */
export function given(...paragraphs: (Paragraph | undefined | false | '')[]): Paragraph[] {
  return paragraphs.filter((paragraph) => !!paragraph) as Paragraph[];
}
