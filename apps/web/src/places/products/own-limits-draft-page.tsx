import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { EmptyState } from '../../ui/empty-state';
import { LinkButton } from '../../ui/link-button';
import { PageHeader } from '../../ui/page-header';
import { Stack } from '../../ui/stack';
import { wallTime } from '../../ui/wall-time';
import { BeginEdition } from './own-limits/begin-edition';
import { EditionDraft } from './own-limits/edition-draft';
import { OwnCaution } from './own-limits/own-caution';
import { useOwnDraft } from './own-limits/own-draft';
import { useShop } from '../../api/use-shop';
import { useSay } from '../../ui/voice';

export function OwnLimitsDraftPage() {
  const say = useSay('own-limits');
  const { isOwner, zone } = useShop();
  const { draft, keep } = useOwnDraft();
  const [today] = useState(() => wallTime(Date.now(), zone).slice(0, 10));
  return (
    <Stack gap="wide">
      <PageHeader over={<Link to="/calculators/own-limits">{say('own-limits')}</Link>} title={say('title')} under={say('under')} />
      {!isOwner && <OnlyForTheOwner />}
      {isOwner && draft && <EditionDraft draft={draft} today={today} keep={keep} />}
      {isOwner && !draft && (
        <>
          <BeginEdition today={today} onBegin={keep} />
          <OwnCaution />
        </>
      )}
    </Stack>
  );
}

function OnlyForTheOwner() {
  const say = useSay('own-limits');
  return <EmptyState title={say('owner-writes')} action={<LinkButton to="/calculators/own-limits">{say('read-them')}</LinkButton>} />;
}
