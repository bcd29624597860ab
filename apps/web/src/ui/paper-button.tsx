import { languages, type Language } from '@larderbook/messages';
import { useId, type ComponentProps } from 'react';
import { FileButton } from './link-button';
import { Row } from './stack';
import { useVoice } from './voice';

type PaperButtonProps = Omit<ComponentProps<typeof FileButton>, 'href'> & { href: (language: Language) => string };

/** Prints in the reader's language; beside it, in each other one. */
export function PaperButton({ href, 'aria-label': label, ...rest }: PaperButtonProps) {
  const { language: own } = useVoice();
  const [ownId, id] = [useId(), useId()];
  const others = (Object.keys(languages) as Language[]).filter((language) => language !== own);
  return (
    <Row>
      <FileButton {...rest} id={ownId} aria-label={label} href={href(own)} />
      {others.map((other) => (
        <FileButton
          key={other}
          id={`${id}${other}`}
          look="quiet"
          lang={other}
          aria-labelledby={`${ownId} ${id}${other}`}
          href={href(other)}
        >
          {languages[other]}
        </FileButton>
      ))}
    </Row>
  );
}
