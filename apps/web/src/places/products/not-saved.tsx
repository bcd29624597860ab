import { NoConnection } from '../../api/api-problem';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';

/** What is planned does not wait in the outbox: it is saved again. */
export function NotSaved({ error }: { error: unknown }) {
  const say = useSay('products');
  if (!error) return null;
  const noConnection = { title: say('no-connection'), detail: say('save-again') };
  return <Problem error={error instanceof NoConnection ? noConnection : error} />;
}
