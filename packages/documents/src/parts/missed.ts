import type { Verdict } from '@larderbook/haccp';
import type { DeviationData } from '../entry-data';
import type { WallClock } from '../page/wall-clock';
import { given, words, type Paragraph } from '../page/words';

/** What was missed, and by how much. */
export function missInWords({ limit, measured, margin }: Verdict): string {
  return `${bare(measured)} against ${bare(limit)}${margin ? `: ${margin}` : ''}.`;
}

/** What a person wrote may end with a full stop; inside a sentence it does not. */
const bare = (text: string): string => text.replace(/\.\s*$/, '');

/** Why it was missed, what is to be done, and what was assumed. */
export function whyMissed({ because, next, notes }: Verdict): Paragraph[] {
  return given(
    (because || next) && words('smallInk', because, next && { text: ' Next: ', style: 'smallStrong' }, next),
    notes.length > 0 && words('small', notes.join(' ')),
  );
}

/** Under it, the deviation that answers it; with its latest words when the whole deviation is at hand. */
export function answeredBy(number: string | undefined, all: DeviationData[], clock: WallClock): Paragraph[] {
  if (number === undefined) return [words('smallStrong', 'No corrective action is recorded.')];
  const deviation = all.find((each) => each.number === number);
  if (!deviation) return [labelled('Corrective action', `deviation ${number}`)];
  const { closed } = deviation;
  const state = closed ? `closed ${clock.dayAndTime(closed.at)} by ${closed.by}` : 'still open';
  return given(
    labelled('Corrective action', `deviation ${number}, ${state}`),
    deviation.done && words('smallInk', deviation.done),
    ...deviation.dispositions
      .filter(({ voided }) => !voided)
      .map(({ decision, quantity }) => labelled('Disposition', `${decision} ${quantity}`)),
  );
}

function labelled(label: string, text: string): Paragraph {
  return words('smallInk', { text: `${label}: `, style: 'smallStrong' }, text);
}
