import { useId, useLayoutEffect, useRef, type ReactNode } from 'react';
import { Announcer } from './announcer';
import { Button, type ButtonLook } from './button';
import css from './dialog.module.css';
import { useSay } from './voice';

type DialogProps = {
  title: string;
  onClose: () => void;
  children: ReactNode;
  actions?: ReactNode;
  /** "Cancel" unless there is nothing to save. */
  closeLabel?: string;
  closeLook?: ButtonLook;
};

/** Shown while it is mounted; Escape closes it, and the focus goes back where it was. */
export function Dialog({ title, onClose, children, actions, closeLabel, closeLook = 'quiet' }: DialogProps) {
  const say = useSay('shared');
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useLayoutEffect(() => {
    // closed while still in the page, or the focus would not find back
    const shown = dialog.current;
    shown?.showModal();
    return () => shown?.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={css.dialog}
      aria-labelledby={titleId}
      onCancel={(event) => {
        if (event.target !== event.currentTarget) return; // React hands on what a dialog inside this one was told
        event.preventDefault(); // it stays until the owner unmounts it
        onClose();
      }}
    >
      <h2 id={titleId} className={css.title}>
        {title}
      </h2>
      <div className={css.body}>{children}</div>
      <div className={css.foot}>
        <Button look={closeLook} onClick={onClose}>
          {closeLabel ?? say('cancel')}
        </Button>
        {actions}
      </div>
      <Announcer /> {/* what is said outside a modal dialog is not heard inside */}
    </dialog>
  );
}
