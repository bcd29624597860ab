import type { ReactNode } from 'react';
import { useShop } from '../../api/use-shop';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';

const pages = [
  { to: '/receiving', name: 'Deliveries' },
  { to: '/receiving/items', name: 'Items' },
  { to: '/receiving/suppliers', name: 'Suppliers' },
];

type ReceivingFrameProps = { title: string; actions?: ReactNode; children: ReactNode };

/** The pages of the door, under one head. An inspector reads why nothing can be recorded. */
export function ReceivingFrame({ title, actions, children }: ReceivingFrameProps) {
  const { mayRecord } = useShop();
  return (
    <Stack>
      <PageTabs label="Receiving" pages={pages} />
      <PageHeader title={title} actions={mayRecord && actions} />
      {children}
      {!mayRecord && <p>An inspector reads; what comes in is recorded by the people of the shop.</p>}
    </Stack>
  );
}
