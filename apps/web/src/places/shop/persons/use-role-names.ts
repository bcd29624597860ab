import type { Role } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';

/** "Owner, Reviewer"; whoever has no role has left. */
export function useRoleNames(): (roles: readonly Role[]) => string {
  const say = useSay('people');
  const sayShared = useSay('shared');
  return (roles) => (roles.length === 0 ? say('has-left') : roles.map((role) => sayShared(codeOf('role', role))).join(', '));
}
