import { LinkButton } from '../../../ui/link-button';
import { PageHeader } from '../../../ui/page-header';
import { Stack } from '../../../ui/stack';
import { DemonstrationSignIns } from './demonstration-sign-ins';

/** The demonstration shop: made on the first visit, then a tap away for each of its people. */
export function OpenDemonstration() {
  return (
    <Stack>
      <PageHeader
        title="Demonstration shop"
        under="Invented people in an invented shop. Go in as any of them and try anything: none of it is a record of yours."
      />
      <DemonstrationSignIns />
      <div>
        <LinkButton to="/welcome">Back</LinkButton>
      </div>
    </Stack>
  );
}
