import { useId, type ReactNode } from 'react';
import { Button } from './button';
import { Dialog } from './dialog';
import { Form } from './form';
import { Problem } from './problem';
import { Stack } from './stack';
import { useSay } from './voice';

type FormDialogProps = {
  title: string;
  /** What is wrong with which field. */
  errors: Record<string, string>;
  /** What stood in the way when it was no field: said under the fields. */
  problem: unknown;
  busy: boolean;
  /** "Save" unless it is saved all the same. */
  saveLabel?: string;
  /** Beside Save, another way to go on. */
  instead?: ReactNode;
  onSave: () => void;
  onClose: () => void;
  children: ReactNode;
};

/** A form in a dialog, saved by the button at its foot. */
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
