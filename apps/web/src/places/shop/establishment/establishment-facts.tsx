import type { EstablishmentFields } from '@larderbook/contracts';
import { codedText, codeOf } from '@larderbook/messages';
import { Facts } from '../../../ui/facts';
import { useNow } from '../../../ui/time-left';
import { wallTime } from '../../../ui/wall-time';
import { useLimits } from '../../../ui/use-tell';
import { useSay, useSpoken } from '../../../ui/voice';
import { EditionInUse } from './edition-in-use';
import { lotCodeExample } from './lot-code-example';

const aMinute = 60_000;

export function EstablishmentFacts({ establishment }: { establishment: EstablishmentFields }) {
  const { name, number, address, timeZone, units, paper, lotCodePattern, jurisdiction, place } = establishment;
  const say = useSay('shop');
  const told = useSpoken('shop');
  const { sayWhere } = useLimits();
  const example = lotCodeExample(lotCodePattern, wallTime(useNow(aMinute), timeZone).slice(0, 10));
  return (
    <Facts
      facts={[
        { name: say('name'), value: name },
        { name: say('number'), value: number || say('none') },
        { name: say('address'), value: address || say('none') },
        { name: say('time-zone'), value: timeZone.replaceAll('_', ' ') },
        { name: say('units'), value: say(codeOf('units', units)) },
        { name: say('paper'), value: say(codeOf('paper', paper)) },
        {
          name: say('whose-limits'),
          value: jurisdiction ? sayWhere({ jurisdiction, place }) : say('none-assumed'),
        },
        ...(jurisdiction ? [{ name: say('edition'), value: <EditionInUse where={establishment} /> }] : []),
        {
          name: say('lot-code'),
          value:
            'fault' in example
              ? `${lotCodePattern}: ${codedText(told, example.fault)}`
              : say('pattern-today', { pattern: lotCodePattern, code: example.first }),
        },
      ]}
    />
  );
}
