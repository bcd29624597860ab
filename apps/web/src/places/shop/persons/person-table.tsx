import type { listPeople, ReplyOf } from '@larderbook/contracts';
import { useSession } from '../../../api/session';
import { useShop } from '../../../api/use-shop';
import { Button } from '../../../ui/button';
import { Moment } from '../../../ui/moment';
import { Table, type Column } from '../../../ui/table';
import { useSay } from '../../../ui/voice';
import { useRoleNames } from './use-role-names';

export type Person = ReplyOf<typeof listPeople>['people'][number];

type PersonTableProps = { people: Person[]; onChange?: (person: Person) => void };

/** Those who have left stay in the list, because their records do. */
export function PersonTable({ people, onChange }: PersonTableProps) {
  const say = useSay('people');
  const sayShared = useSay('shared');
  const roleNames = useRoleNames();
  const { zone } = useShop();
  const self = useSession()?.personId;
  const hasLeft = ({ roles }: Person) => roles.length === 0;
  const columns: Column<Person>[] = [
    {
      head: say('name'),
      cell: (person) =>
        hasLeft(person) ? <s>{person.name}</s> : person.personId === self ? say('you', { name: person.name }) : person.name,
    },
    { head: say('may'), cell: ({ roles }) => roleNames(roles) },
    { head: say('user-name'), cell: ({ userName }) => userName, oneLine: true },
    { head: say('since'), cell: ({ since }) => <Moment at={since} zone={zone} show="day" />, oneLine: true },
    ...(onChange
      ? [
          {
            head: sayShared('change'),
            cell: (person: Person) => (
              <Button aria-label={say('change-person', { name: person.name })} onClick={() => onChange(person)}>
                {sayShared('change')}
              </Button>
            ),
          },
        ]
      : []),
  ];
  return (
    <Table
      caption={say('title')}
      captionUnseen
      columns={columns}
      rowKey={({ personId }) => personId}
      rows={[...people.filter((person) => !hasLeft(person)), ...people.filter(hasLeft)]}
    />
  );
}
