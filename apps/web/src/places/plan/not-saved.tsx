import { NoConnection } from '../../api/api-problem';
import { Problem } from '../../ui/problem';

const noConnection = {
  title: 'No connection to the record book.',
  detail: 'Nothing was saved. What you wrote stays here: save it again when the connection is back.',
};

/** Why something was not written into the book. What is planned does not wait in the outbox: the owner saves it again. */
export function NotSaved({ error }: { error: unknown }) {
  if (!error) return null;
  return <Problem error={error instanceof NoConnection ? noConnection : error} />;
}
