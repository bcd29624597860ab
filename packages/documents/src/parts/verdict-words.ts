import { isUnconfirmed, type Source, type Told } from '@larderbook/haccp';
import { tellSupport } from '@larderbook/messages';
import { given, words, type Paragraph } from '../page/words';
import type { SayOnPaper } from '../page/telling';

export function verdictInShort({ kind, margin }: Told, say: SayOnPaper): Paragraph {
  const text = margin ? say(`${kind}-by`, { margin }) : say(kind);
  return words('body', { mark: kind }, { text, style: kind === 'met' ? 'body' : 'strong' });
}

export function verdictInFull({ because, next, notes, source }: Told, say: SayOnPaper): Paragraph[] {
  return given(
    (because || next) && words('smallInk', because, next && { text: ` ${say('next-step')} `, style: 'smallStrong' }, next),
    notes.length > 0 && words('small', notes.join(' ')),
    words('small', sourceInWords(source, say)),
  );
}

/** A figure that nobody has read in its source says so. */
export function sourceInWords(source: Source, say: SayOnPaper): string {
  const { citation, edition } = source;
  const cited = say('source-is', { cited: edition ? `${citation}, ${edition}` : citation });
  const more = [...(isUnconfirmed(source) ? [`${say('not-confirmed')}.`] : []), ...tellSupport(source, say)];
  return [cited, ...more].join('. ');
}

/** Printed once, where the marks are first used. */
export function legendOfMarks(say: SayOnPaper): Paragraph {
  return words(
    'small',
    { mark: 'met' },
    `${say('means-met')}     `,
    { mark: 'undetermined' },
    `${say('means-undetermined')}     `,
    { mark: 'missed' },
    say('means-missed'),
  );
}
