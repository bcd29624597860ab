import { hasEnded, limitOfRow, newerEditionOf, type CriticalLimit } from '@larderbook/haccp';
import type { LimitTeller } from '@larderbook/messages';
import type { OwnEdition } from './own-limits.queries';

export type OwnOffered = {
  key: string;
  title: string;
  said: string;
  limit: CriticalLimit;
  alsoNeeds: string[];
  own: { title: string; edition: string };
};

/** Only the edition that counts on that day, without rows that have ended. */
export const ownOnOffer = (own: readonly OwnEdition[], today: string, { sayLimit, sayCondition }: LimitTeller): OwnOffered[] =>
  own
    .filter(({ id, validFrom }) => validFrom <= today && !newerEditionOf(own, { setId: id, today }))
    .flatMap(({ id, title, edition, rows }) =>
      rows
        .filter((row) => !hasEnded(row, today))
        .map((row) => ({
          key: `${id}/${row.id}`,
          title: row.title,
          said: sayLimit(row.limit),
          limit: limitOfRow(row),
          alsoNeeds: row.conditions.map(sayCondition),
          own: { title, edition },
        })),
    );
