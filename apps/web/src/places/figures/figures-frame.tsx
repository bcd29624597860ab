import type { ReactNode } from 'react';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';

const pages = [
  { to: '/figures', name: 'Work it out' },
  { to: '/figures/limits', name: 'Published limits' },
  { to: '/figures/own-limits', name: 'Own limits' },
];

type FiguresFrameProps = { title: string; under?: ReactNode; actions?: ReactNode; children: ReactNode };

/** The pages of figures that belong to no lot, under one head. */
export function FiguresFrame({ title, under, actions, children }: FiguresFrameProps) {
  return (
    <Stack>
      <PageTabs label="Figures" pages={pages} />
      <PageHeader title={title} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
