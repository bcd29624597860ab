import type { ReactNode } from 'react';
import { PageHeader } from '../../ui/page-header';
import { PageTabs } from '../../ui/page-tabs';
import { Stack } from '../../ui/stack';

const pages = [
  { to: '/calculators', name: 'Work it out' },
  { to: '/calculators/limits', name: 'Published limits' },
  { to: '/calculators/own-limits', name: 'Own limits' },
];

type CalculatorsFrameProps = { title: string; under?: ReactNode; actions?: ReactNode; children: ReactNode };

/** The pages of figures that belong to no lot, under one head. */
export function CalculatorsFrame({ title, under, actions, children }: CalculatorsFrameProps) {
  return (
    <Stack>
      <PageTabs label="Calculators" pages={pages} />
      <PageHeader title={title} under={under} actions={actions} />
      {children}
    </Stack>
  );
}
