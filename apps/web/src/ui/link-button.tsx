import { createLink } from '@tanstack/react-router';
import type { AnchorHTMLAttributes, Ref } from 'react';
import { buttonClass, type ButtonLook } from './button';

type AnchorProps = AnchorHTMLAttributes<HTMLAnchorElement> & {
  look?: ButtonLook;
  wide?: boolean;
  ref?: Ref<HTMLAnchorElement>;
};

function Anchor({ look = 'plain', wide = false, ...rest }: AnchorProps) {
  return <a {...rest} className={buttonClass(look, wide)} />;
}

/** A link to another page that looks like a button; takes the router's `to`, `params`, `search`. */
export const LinkButton = createLink(Anchor);

/** A button-like link out of the application's pages: a PDF, a JSON export. Opens where the browser shows files. */
export function FileButton({ children, ...rest }: AnchorProps & { href: string }) {
  return (
    <Anchor target="_blank" rel="noopener" {...rest}>
      {children}
    </Anchor>
  );
}
