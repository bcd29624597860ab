import { isUnconfirmed, saySupport, type Source, type Verdict } from '@larderbook/haccp';
import { given, words, type Paragraph } from '../page/words';

/** Shape, word and margin: what a verdict is at a glance. */
export function verdictInShort({ kind, margin }: Verdict): Paragraph {
  const text = margin ? `${kind}, ${margin}` : kind;
  return words('body', { mark: kind }, { text, style: kind === 'met' ? 'body' : 'strong' });
}

/** Why and what next, what was assumed, and where the figure comes from. */
export function verdictInFull({ because, next, notes, source }: Verdict): Paragraph[] {
  return given(
    (because || next) && words('smallInk', because, next && { text: ' Next: ', style: 'smallStrong' }, next),
    notes.length > 0 && words('small', notes.join(' ')),
    words('small', sourceInWords(source)),
  );
}

/** Where a figure comes from and what the plan says of its support; one that nobody has read there says so. */
export function sourceInWords(source: Source): string {
  const { citation, edition } = source;
  const cited = `Source: ${edition ? `${citation}, ${edition}` : citation}`;
  const more = [...(isUnconfirmed(source) ? ['This figure has not been confirmed against its source.'] : []), ...saySupport(source)];
  return [cited, ...more].join('. ');
}

/** What the shapes mean; printed once where they are first used. */
export function legendOfMarks(): Paragraph {
  return words(
    'small',
    { mark: 'met' },
    'met     ',
    { mark: 'undetermined' },
    'undetermined: never counts as met     ',
    { mark: 'missed' },
    'missed, and framed where it was recorded',
  );
}
