import type { SayOf } from '@larderbook/messages';

/** The time left, with the forecast's warning where there is one. */
export function withWarning(left: string, state: string | undefined, say: SayOf<'lots'>): string {
  if (state === 'at risk') return say('warned-at-risk', { left });
  return state === 'will miss' ? say('warned-will-miss', { left }) : left;
}
