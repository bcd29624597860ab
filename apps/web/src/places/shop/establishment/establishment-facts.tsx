import type { EstablishmentFields } from '@larderbook/contracts';
import { Facts } from '../../../ui/facts';
import { useNow } from '../../../ui/time-left';
import { wallTime } from '../../../ui/wall-time';
import { EditionInUse } from './edition-in-use';
import { lotCodeExample } from './lot-code-example';
import { paperWords, unitsWords } from './say-habits';
import { sayWhere } from './say-where';

const aMinute = 60_000;

/** The establishment's details, with what a lot code looks like. */
export function EstablishmentFacts({ establishment }: { establishment: EstablishmentFields }) {
  const { name, number, address, timeZone, units, paper, lotCodePattern, jurisdiction, place } = establishment;
  const example = lotCodeExample(lotCodePattern, wallTime(useNow(aMinute), timeZone).slice(0, 10));
  return (
    <Facts
      facts={[
        { name: 'Name', value: name },
        { name: 'Number', value: number || 'none' },
        { name: 'Address', value: address || 'none' },
        { name: 'Time zone', value: timeZone.replaceAll('_', ' ') },
        { name: 'Units on screen', value: unitsWords[units] },
        { name: 'Paper', value: paperWords[paper] },
        {
          name: 'Published limits that count',
          value: jurisdiction ? sayWhere({ jurisdiction, place }) : 'not said: none is assumed',
        },
        ...(jurisdiction ? [{ name: 'Edition in use', value: <EditionInUse where={establishment} /> }] : []),
        {
          name: 'Lot code',
          value: 'fault' in example ? `${lotCodePattern}: ${example.fault}` : `${lotCodePattern}, today ${example.first}`,
        },
      ]}
    />
  );
}
