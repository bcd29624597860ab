import type { Told } from '@larderbook/haccp';
import type { DeviationData } from '../entry-data';
import type { SayOnPaper, Telling } from '../page/telling';
import { given, words, type Paragraph } from '../page/words';

export function missInWords({ limit, measured, margin }: Told, say: SayOnPaper): string {
  const said = { measured: bare(measured), limit: bare(limit) };
  return margin ? say('measured-against-by', { ...said, margin }) : say('measured-against', said);
}

/** A person's full stop must not stand inside a sentence. */
const bare = (text: string): string => text.replace(/\.\s*$/, '');

export function whyMissed({ because, next, notes }: Told, say: SayOnPaper): Paragraph[] {
  return given(
    (because || next) && words('smallInk', because, next && { text: ` ${say('next-step')} `, style: 'smallStrong' }, next),
    notes.length > 0 && words('small', notes.join(' ')),
  );
}

/** `all` may not hold the deviation; then only its number is printed. */
export function answeredBy(number: string | undefined, all: DeviationData[], { clock, say }: Telling): Paragraph[] {
  if (number === undefined) return [words('smallStrong', say('no-action-recorded'))];
  const deviation = all.find((each) => each.number === number);
  if (!deviation) return [labelled(say('corrective-action'), say('by-deviation', { number }))];
  const { closed } = deviation;
  const state = closed
    ? say('by-deviation-closed', { number, at: clock.dayAndTime(closed.at), who: closed.by })
    : say('by-deviation-open', { number });
  return given(
    labelled(say('corrective-action'), state),
    deviation.done && words('smallInk', deviation.done),
    ...deviation.dispositions
      .filter(({ voided }) => !voided)
      .map(({ decision, quantity }) => labelled(say('disposition-was'), `${decision} ${quantity}`)),
  );
}

function labelled(label: string, text: string): Paragraph {
  return words('smallInk', { text: `${label} `, style: 'smallStrong' }, text);
}
