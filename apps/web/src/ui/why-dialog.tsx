import { useState, type ReactNode } from 'react';
import { Button } from './button';
import { Dialog } from './dialog';
import { Problem } from './problem';
import { Stack } from './stack';
import { TextArea } from './text-area';
import { Tiles } from './tiles';
import { useSay } from './voice';

type Saving = { busy: boolean; refused?: { words: string } };

type WhyDialogProps = {
  title: string;
  children: ReactNode;
  /** Reasons that a tap gives. */
  usual: keyof typeof usualReasons;
  /** On the button that takes a reason of one's own: "Next", "Void". */
  verb: string;
  /** Set where a reason is all that is asked. */
  saving?: Saving;
  /** Another way to go on, beside it. */
  instead?: ReactNode;
  onReason: (reason: string) => void;
  onClose: () => void;
};

export function WhyDialog({ title, children, usual, verb, saving, instead, onReason, onClose }: WhyDialogProps) {
  const say = useSay('recording');
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
              <Button look="primary" busy={saving?.busy} onClick={() => onReason(own.trim())}>
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
        <Tiles
          label={say('usual-reasons')}
          busy={saving?.busy}
          tiles={usualReasons[usual].map((code) => ({ key: code, title: say(code), onTap: () => onReason(say(code)) }))}
        />
        <TextArea label={say('another-reason')} optional maxLength={2000} value={own} onChange={setOwn} />
      </Stack>
    </Dialog>
  );
}

type VoidDialogProps = Pick<WhyDialogProps, 'title' | 'children' | 'onClose'> & {
  voiding: Saving & { strike: (reason: string) => Promise<unknown> };
};

export function VoidDialog({ voiding, ...shown }: VoidDialogProps) {
  const say = useSay('shared');
  return <WhyDialog {...shown} usual="to-void" verb={say('void')} saving={voiding} onReason={(reason) => void voiding.strike(reason)} />;
}

const usualReasons = {
  'to-correct': ['typed-wrongly', 'read-wrongly', 'wrong-unit', 'wrong-thing'],
  'to-void': ['entered-twice', 'never-happened', 'belongs-elsewhere'],
  'to-take-back': ['too-early', 'overlooked', 'meant-for-another'],
} as const;
