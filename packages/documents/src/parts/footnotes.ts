import type { Block } from '../page/block';
import { remark } from '../page/facts';
import type { Sheet } from '../page/sheet';
import { words, type Paragraph, type Span } from '../page/words';

/** What is odd about entries, said once under their list; each entry carries the letter of what applies to it. */
export class Footnotes {
  private readonly letters = new Map<string, string>();
  private readonly said: Paragraph[] = [];

  /** "a", "b" … "z", "aa": the same letter for the same flag. */
  letterOf(flag: string): string {
    return this.letterFor(flag, words('smallInk', flag));
  }

  /** A letter for words that belong to one entry alone. */
  letterFor(key: string, paragraph: Paragraph): string {
    const known = this.letters.get(key);
    if (known) return known;
    const letter = nth(this.letters.size);
    this.letters.set(key, letter);
    this.said.push({ ...paragraph, spans: [...markOf(letter), { text: '  ' }, ...paragraph.spans] });
    return letter;
  }

  /** All letters of one entry, as they stand beside its time. */
  lettersOf(flags: readonly string[] | undefined): string {
    return (flags ?? []).map((flag) => this.letterOf(flag)).join(' ');
  }

  /** What the letters mean; nothing when there is nothing odd. */
  legend({ pen, area, say }: Sheet): Block[] {
    return this.said.length ? [remark(pen, area, say('flagged'), ...this.said)] : [];
  }
}

/** A small flag with its letter. */
export const markOf = (letter: string): Span[] => [{ mark: 'flag' }, { text: letter, style: 'smallStrong' }];

function nth(index: number): string {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : nth(Math.floor(index / 26) - 1) + last;
}
