import type { listPeople, ReplyOf } from '@larderbook/contracts';
import { useSession } from '../../../api/session';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Moment } from '../../../ui/moment';
import { Table, type Column } from '../../../ui/table';
import { sayRoles } from './role-words';

export type Person = ReplyOf<typeof listPeople>['people'][number];

type PersonTableProps = { people: Person[]; onChange?: (person: Person) => void };

/** Those who work here first; those who have left stay in the list, because their records do. */
export function PersonTable({ people, onChange }: PersonTableProps) {
  const { zone } = useShop();
  const self = useSession()?.personId;
  const hasLeft = ({ roles }: Person) => roles.length === 0;
  const columns: Column<Person>[] = [
    {
      head: 'Name',
      cell: (person) => (
        <>
          {hasLeft(person) ? <s>{person.name}</s> : person.name}
          {person.personId === self && ' (you)'}
        </>
      ),
    },
    { head: 'May', cell: ({ roles }) => sayRoles(roles) },
    { head: 'User name', cell: ({ userName }) => userName, oneLine: true },
    { head: 'Since', cell: ({ since }) => <Moment at={since} zone={zone} show="day" />, oneLine: true },
    ...(onChange
      ? [
          {
            head: 'Change',
            cell: (person: Person) => (
              <Button aria-label={`Change ${person.name}`} onClick={() => onChange(person)}>
                Change
              </Button>
            ),
          },
        ]
      : []),
  ];
  return (
    <Table
      caption="People"
      captionUnseen
      columns={columns}
      rowKey={({ personId }) => personId}
      rows={[...people.filter((person) => !hasLeft(person)), ...people.filter(hasLeft)]}
    />
  );
}
