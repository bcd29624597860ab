import type { ReactNode } from 'react';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';

const pages = [
  { to: '/figures', name: 'Work it out' },
  { to: '/figures/limits', name: 'Published limits' },
];

/** The pages of figures that belong to no lot, under one head. */
export function FiguresFrame({ title, under, children }: { title: string; under?: ReactNode; children: ReactNode }) {
  return (
    <Stack>
      <PageTabs label="Figures" pages={pages} />
      <PageHeader title={title} under={under} />
      {children}
    </Stack>
  );
}
