import type { ReactNode } from 'react';
import { useSession } from '../../api/session';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';

const pages = [
  { to: '/shop', name: 'Establishment' },
  { to: '/shop/people', name: 'People' },
  { to: '/shop/instruments', name: 'Instruments' },
  { to: '/shop/ledger', name: 'Ledger' },
];

type ShopFrameProps = { title: string; under?: ReactNode; actions?: ReactNode; children: ReactNode };

/** The pages about the shop itself, under one head. */
export function ShopFrame({ title, under, actions, children }: ShopFrameProps) {
  const who = useSession();
  return (
    <Stack>
      <PageTabs label="Shop" pages={pages} />
      <PageHeader title={title} over={who?.establishment.name} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
