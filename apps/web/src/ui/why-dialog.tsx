import { useState, type ReactNode } from 'react';
import { Button } from './button';
import { Dialog } from './dialog';
import { Problem } from './problem';
import { Stack } from './stack';
import { TextArea } from './text-area';
import { Tiles } from './tiles';

type Saving = { busy: boolean; refused?: { words: string } };

type WhyDialogProps = {
  title: string;
  children: ReactNode;
  /** Reasons that a tap gives. */
  usual: readonly string[];
  /** What the button says that takes a reason of one's own: "Next", "Void". */
  verb: string;
  /** How far the save has come, where a reason is all that is asked. */
  saving?: Saving;
  /** Beside it, another way to go on. */
  instead?: ReactNode;
  onReason: (reason: string) => void;
  onClose: () => void;
};

/** Asks why something recorded is corrected or voided: a usual reason by a tap, or one's own in words. */
export function WhyDialog({ title, children, usual, verb, saving, instead, onReason, onClose }: WhyDialogProps) {
  const [own, setOwn] = useState('');
  const isSaid = own.trim().length >= 3;
  return (
    <Dialog
      title={title}
      onClose={onClose}
      actions={
        (isSaid || instead) && (
          <>
            {isSaid && (
              <Button look="primary" busy={saving?.busy && 'Keeping it…'} onClick={() => onReason(own.trim())}>
                {verb}
              </Button>
            )}
            {instead}
          </>
        )
      }
    >
      <Stack>
        {children}
        {saving?.refused && <Problem error={{ title: saving.refused.words }} />}
        <Tiles label="Usual reasons" tiles={usual.map((each) => ({ key: each, title: each, onTap: () => onReason(each) }))} />
        <TextArea label="Another reason" optional maxLength={2000} value={own} onChange={setOwn} />
      </Stack>
    </Dialog>
  );
}

type VoidDialogProps = Pick<WhyDialogProps, 'title' | 'children' | 'onClose'> & {
  voiding: Saving & { strike: (reason: string) => Promise<unknown> };
};

/** Asks why something recorded is voided, and voids it. */
export function VoidDialog({ voiding, ...shown }: VoidDialogProps) {
  return <WhyDialog {...shown} usual={usualToVoid} verb="Void" saving={voiding} onReason={(reason) => void voiding.strike(reason)} />;
}

export const usualToTakeBack = ['Too early', 'Something was overlooked', 'Meant for another'] as const;
const usualToVoid = ['Entered twice', 'It never happened', 'It belongs elsewhere'] as const;
export const usualToCorrect = ['Typed wrongly', 'Read wrongly', 'Wrong unit', 'Entered for the wrong thing'] as const;
