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

export const LinkButton = createLink(Anchor);

/** Out of the application's pages: a PDF, a JSON export. */
export function FileButton({ children, ...rest }: AnchorProps & { href: string }) {
  return (
    <Anchor target="_blank" rel="noopener" {...rest}>
      {children}
    </Anchor>
  );
}
