import type { ReactNode } from 'react';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';

const pages = [
  { to: '/shipping', name: 'tab-stock' },
  { to: '/shipping/shipments', name: 'shipments' },
  { to: '/shipping/customers', name: 'customers' },
] as const;

type ShippingFrameProps = { title: string; under?: ReactNode; actions?: ReactNode; children: ReactNode };

export function ShippingFrame({ title, under, actions, children }: ShippingFrameProps) {
  const say = useSay('shipping');
  return (
    <Stack>
      <PageTabs label={say('shipping')} pages={pages.map(({ to, name }) => ({ to, name: say(name) }))} />
      <PageHeader title={title} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
