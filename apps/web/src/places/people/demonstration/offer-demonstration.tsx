import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Section } from '../../../ui/section';
import { DemonstrationSignIns } from './demonstration-sign-ins';

/** The demonstration's sign-ins beside one's own: at once where there is nothing else, else behind one tap. */
export function OfferDemonstration({ isAlone }: { isAlone: boolean }) {
  const [open, setOpen] = useState(isAlone);
  return (
    <Section title="Demonstration shop">
      {open ? <DemonstrationSignIns /> : <Button onClick={() => setOpen(true)}>Sign in to the demonstration shop</Button>}
    </Section>
  );
}
