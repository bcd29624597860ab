import type { SayOf, TellAccount, TellSaid } from '@larderbook/messages';
import { useAccount } from '../../../ui/use-account';
import { useSaid } from '../../../ui/use-said';
import { useFigures, useSay } from '../../../ui/voice';

export type SheetVoice = {
  say: SayOf<'day-sheet'>;
  sayEntry: SayOf<'entries'>;
  tell: TellAccount;
  tellSaid: TellSaid;
  figures: Pick<ReturnType<typeof useFigures>, 'quantity'>;
};

export const useSheetVoice = (): SheetVoice => ({
  say: useSay('day-sheet'),
  sayEntry: useSay('entries'),
  tell: useAccount(),
  tellSaid: useSaid(),
  figures: useFigures(),
});
