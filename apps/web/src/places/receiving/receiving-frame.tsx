import type { ReactNode } from 'react';
import { useShop } from '../../api/use-shop';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';

const pages = [
  { to: '/receiving', name: 'deliveries' },
  { to: '/receiving/items', name: 'items' },
  { to: '/receiving/suppliers', name: 'suppliers' },
] as const;

type ReceivingFrameProps = { title: (typeof pages)[number]['name']; actions?: ReactNode; children: ReactNode };

/** An inspector reads why nothing can be recorded. */
export function ReceivingFrame({ title, actions, children }: ReceivingFrameProps) {
  const say = useSay('receiving');
  const { mayRecord } = useShop();
  return (
    <Stack>
      <PageTabs label={say('receiving')} pages={pages.map(({ to, name }) => ({ to, name: say(name) }))} />
      <PageHeader title={say(title)} actions={mayRecord && actions} />
      {children}
      {!mayRecord && <p>{say('inspector-reads')}</p>}
    </Stack>
  );
}
