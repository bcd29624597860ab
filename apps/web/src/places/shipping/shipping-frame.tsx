import type { ReactNode } from 'react';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';

const pages = [
  { to: '/shipping', name: 'In stock' },
  { to: '/shipping/shipments', name: 'Shipments' },
  { to: '/shipping/customers', name: 'Customers' },
];

type ShippingFrameProps = { title: string; under?: ReactNode; actions?: ReactNode; children: ReactNode };

/** The pages about what leaves the shop, under one head. */
export function ShippingFrame({ title, under, actions, children }: ShippingFrameProps) {
  return (
    <Stack>
      <PageTabs label="Shipping" pages={pages} />
      <PageHeader title={title} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
