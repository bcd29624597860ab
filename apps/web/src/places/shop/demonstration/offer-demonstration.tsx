import { useState } from 'react';
import { Button } from '../../../ui/button';
import { Section } from '../../../ui/section';
import { useSay } from '../../../ui/voice';
import { DemonstrationSignIns } from './demonstration-sign-ins';

export function OfferDemonstration({ isAlone }: { isAlone: boolean }) {
  const say = useSay('sign-in');
  const [open, setOpen] = useState(isAlone);
  return (
    <Section title={say('demonstration')}>
      {open ? <DemonstrationSignIns /> : <Button onClick={() => setOpen(true)}>{say('open-demonstration')}</Button>}
    </Section>
  );
}
