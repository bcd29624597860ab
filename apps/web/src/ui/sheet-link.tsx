import { createLink } from '@tanstack/react-router';
import type { AnchorHTMLAttributes, Ref } from 'react';
import css from './sheet.module.css';

type AnchorProps = AnchorHTMLAttributes<HTMLAnchorElement> & { ref?: Ref<HTMLAnchorElement> };

function Anchor(props: AnchorProps) {
  return <a {...props} className={css.link} />;
}

/** The whole line takes the tap. */
export const SheetLink = createLink(Anchor);
