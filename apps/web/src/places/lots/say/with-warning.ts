import type { SayOf } from '@larderbook/messages';

export function withWarning(left: string, state: string | undefined, say: SayOf<'lots'>): string {
  if (state === 'at risk') return say('warned-at-risk', { left });
  return state === 'will miss' ? say('warned-will-miss', { left }) : left;
}
