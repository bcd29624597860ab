import type { Role } from '@larderbook/contracts';

/** What each role is for, in words. */
export const roleWords: Record<Role, { name: string; does: string }> = {
  owner: { name: 'Owner', does: 'Makes accounts, writes and adopts products and plans, and does all the others do.' },
  operator: { name: 'Operator', does: 'Records deliveries, weights, temperatures and corrective actions.' },
  reviewer: { name: 'Reviewer', does: 'Records too, decides on deviations, and signs the review before a lot ships.' },
  inspector: { name: 'Inspector', does: 'Reads and prints everything, changes nothing.' },
};

/** "Owner, reviewer"; "has left" without any. */
export function sayRoles(roles: Role[]): string {
  const said = roles.map((role) => roleWords[role].name.toLowerCase()).join(', ');
  return said ? said.charAt(0).toUpperCase() + said.slice(1) : 'Has left';
}
