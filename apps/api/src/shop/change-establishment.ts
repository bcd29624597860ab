import { Injectable } from '@nestjs/common';
import type { changeEstablishment, EstablishmentFields, InputOf } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { checkLotCodePattern } from './lot-code-pattern';
import { checkWhereItWorks } from './where-it-works';

/**
 * Records keep their units and codes, and adopted plans their limits: another jurisdiction or edition is a reason to
 * reassess, never a change.
 */
@Injectable()
export class ChangeEstablishment {
  constructor(private readonly once: RecordOnce) {}

  run(input: InputOf<typeof changeEstablishment>, by: Person): Promise<EstablishmentFields> {
    const { detailsId, ...details } = input;
    checkLotCodePattern(details.lotCodePattern);
    checkWhereItWorks(details);

    return this.once.run(by, { id: detailsId, kind: 'establishment details', request: input }, async (tx, at) => {
      const row = {
        ...details,
        establishmentId: by.establishmentId,
        id: detailsId,
        recordedAt: at,
        recordedBy: by.personId,
      };
      const { count } = await tx.establishmentDetails.createMany({ data: [row], skipDuplicates: true });
      if (count === 0) throw new Problem('sent-differently');
      return details;
    });
  }
}
