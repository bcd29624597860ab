import { LinkButton } from '../../../ui/link-button';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import { useSay } from '../../../ui/voice';
import { DemonstrationSignIns } from './demonstration-sign-ins';

export function OpenDemonstration() {
  const say = useSay('welcome');
  const sayShared = useSay('shared');
  return (
    <Stack>
      <PageHeader title={say('demonstration')} under={say('invented-people')} />
      <DemonstrationSignIns />
      <div>
        <LinkButton to="/welcome">{sayShared('back')}</LinkButton>
      </div>
    </Stack>
  );
}
