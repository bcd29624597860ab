import type { SayOf } from '@larderbook/messages';
import { useFigures, useSay } from '../../../ui/voice';

export type SheetVoice = {
  say: SayOf<'day-sheet'>;
  sayEntry: SayOf<'entries'>;
  figures: Pick<ReturnType<typeof useFigures>, 'quantity'>;
};

export const useSheetVoice = (): SheetVoice => ({ say: useSay('day-sheet'), sayEntry: useSay('entries'), figures: useFigures() });
