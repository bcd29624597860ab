import type { Block } from '../page/block';
import { remark } from '../page/facts';
import type { Sheet } from '../page/sheet';
import { words, type Paragraph, type Span } from '../page/words';

/** Each flag is told once under the list; entries carry its letter. */
export class Footnotes {
  private readonly letters = new Map<string, string>();
  private readonly said: Paragraph[] = [];

  /** "a", "b" … "z", "aa": the same letter for the same flag. */
  letterOf(flag: string): string {
    return this.letterFor(flag, words('smallInk', flag));
  }

  /** The same key gets the same letter. */
  letterFor(key: string, paragraph: Paragraph): string {
    const known = this.letters.get(key);
    if (known) return known;
    const letter = nth(this.letters.size);
    this.letters.set(key, letter);
    this.said.push({ ...paragraph, spans: [...markOf(letter), { text: '  ' }, ...paragraph.spans] });
    return letter;
  }

  lettersOf(flags: readonly string[] | undefined): string {
    return (flags ?? []).map((flag) => this.letterOf(flag)).join(' ');
  }

  legend({ pen, area, say }: Sheet): Block[] {
    return this.said.length ? [remark(pen, area, say('flagged'), ...this.said)] : [];
  }
}

export const markOf = (letter: string): Span[] => [{ mark: 'flag' }, { text: letter, style: 'smallStrong' }];

function nth(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : nth(Math.floor(index / 26) - 1) + last;
}
