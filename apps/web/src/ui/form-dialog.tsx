import { useId, type ReactNode } from 'react';
import { Button } from './button';
import { Dialog } from './dialog';
import { Form } from './form';
import { Problem } from './problem';
import { Stack } from './stack';
import { useSay } from './voice';

type FormDialogProps = {
  title: string;
  errors: Record<string, string>;
  problem: unknown;
  busy: boolean;
  /** "Save" when left out. */
  saveLabel?: string;
  /** Another way to go on, beside Save. */
  instead?: ReactNode;
  onSave: () => void;
  onClose: () => void;
  children: ReactNode;
};

export function FormDialog({ title, errors, problem, busy, saveLabel, instead, onSave, onClose, children }: FormDialogProps) {
  const say = useSay('shared');
  const form = useId();
  return (
    <Dialog
      title={title}
      onClose={onClose}
      actions={
        <>
          <Button type="submit" form={form} look="primary" busy={busy}>
            {saveLabel ?? say('save')}
          </Button>
          {instead}
        </>
      }
    >
      <Form id={form} errors={errors} busy={busy} onSubmit={onSave}>
        <Stack>
          {children}
          {problem !== undefined && <Problem error={problem} />}
        </Stack>
      </Form>
    </Dialog>
  );
}
