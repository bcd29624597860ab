import { NoConnection } from '../../api/api-problem';
import { Problem } from '../../ui/problem';

const noConnection = {
  title: 'No connection to the record book.',
  detail: 'Count it as not saved; what you wrote stays here. Save it again later: sent twice, it lands once.',
};

/** Why something was not written into the book. What is planned does not wait in the outbox: it is saved again. */
export function NotSaved({ error }: { error: unknown }) {
  if (!error) return null;
  return <Problem error={error instanceof NoConnection ? noConnection : error} />;
}
