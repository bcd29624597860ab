import type { ReactNode } from 'react';
import { useSession } from '../../api/session';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';

const pages = [
  { to: '/shop', name: 'establishment' },
  { to: '/shop/people', name: 'people' },
  { to: '/shop/instruments', name: 'instruments' },
  { to: '/shop/ledger', name: 'ledger' },
] as const;

type ShopFrameProps = { title: (typeof pages)[number]['name']; under?: ReactNode; actions?: ReactNode; children: ReactNode };

export function ShopFrame({ title, under, actions, children }: ShopFrameProps) {
  const say = useSay('shop');
  const who = useSession();
  return (
    <Stack>
      <PageTabs label={say('shop')} pages={pages.map(({ to, name }) => ({ to, name: say(name) }))} />
      <PageHeader title={say(title)} over={who?.establishment.name} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
