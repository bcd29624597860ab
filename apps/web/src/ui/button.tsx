import { useEffect, type ButtonHTMLAttributes, type MouseEvent } from 'react';
import { announce } from './announcer';
import css from './button.module.css';
import { useTapGuard } from './use-tap-guard';
import { useSay } from './voice';

export type ButtonLook = 'primary' | 'plain' | 'quiet';

type ButtonProps = ButtonHTMLAttributes<HTMLButtonElement> & {
  look?: ButtonLook;
  /** While set, the button says "Saving…" or this, announces it, and takes no tap. */
  busy?: string | boolean;
  wide?: boolean;
};

/** At least 48 px (56 when primary); ignores ghost taps. */
export function Button({ look = 'plain', busy: going = false, wide = false, children, onClick, ...rest }: ButtonProps) {
  const say = useSay('shared');
  const busy = going === true ? say('saving') : going;
  const guarded = useTapGuard(onClick);
  useEffect(() => {
    if (busy) announce(busy, { unseen: true });
  }, [busy]);
  const press = (event: MouseEvent<HTMLButtonElement>) => (busy ? event.preventDefault() : guarded(event));
  return (
    <button
      type="button"
      {...rest}
      className={buttonClass(look, wide)}
      aria-disabled={busy ? true : rest['aria-disabled']}
      aria-busy={busy ? true : undefined}
      onClick={press}
    >
      {busy ? (
        <span className={css.busy}>
          <span className={css.working} aria-hidden="true" />
          {busy}
        </span>
      ) : (
        children
      )}
    </button>
  );
}

/** For links that must look like a button. */
export function buttonClass(look: ButtonLook, wide = false): string {
  return [css.button, css[look], wide ? css.wide : ''].join(' ');
}
