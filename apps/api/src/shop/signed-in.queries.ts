import type { SignedIn } from '@larderbook/contracts';
import type { PublishedJurisdiction } from '@larderbook/haccp';
import { isLanguage, type Language } from '@larderbook/messages';
import type { Plain } from '../platform/plain-statements';

type Row = Omit<SignedIn, 'establishment' | 'language'> & {
  language: string | null;
  establishmentName: string;
  number: string;
  address: string;
  timeZone: string;
  units: SignedIn['establishment']['units'];
  paper: SignedIn['establishment']['paper'];
  lotCodePattern: string;
  jurisdiction: PublishedJurisdiction | null;
  place: string | null;
  limitSet: string | null;
};

/** Undefined when the session ended or the person has left. */
export async function signedIn(door: Plain, token: string, now: Date): Promise<SignedIn | undefined> {
  const [row] = await door.$queryRaw<Row[]>`
    SELECT person_id AS "personId", name, user_name AS "userName", language, roles, demonstration,
      establishment_id AS "establishmentId", establishment_name AS "establishmentName", establishment_number AS number,
      address, time_zone AS "timeZone", units, paper, lot_code_pattern AS "lotCodePattern",
      jurisdiction, place, limit_set AS "limitSet"
    FROM signed_in(${token}, ${now})`;
  if (!row) return undefined;

  const { establishmentName, number, address, timeZone, units, paper, lotCodePattern, ...rest } = row;
  const { jurisdiction, place, limitSet, language, ...person } = rest;
  return {
    ...person,
    language: isLanguage(language ?? '') ? (language as Language) : undefined,
    establishment: {
      ...{ name: establishmentName, number, address, timeZone, units, paper, lotCodePattern },
      ...{ jurisdiction: jurisdiction ?? undefined, place: place ?? undefined, limitSet: limitSet ?? undefined },
    },
  };
}

/** The demonstration does not count as a shop. */
export async function firstRun(door: Plain): Promise<{ hasShop: boolean; hasDemonstration: boolean }> {
  const [found] = await door.$queryRaw<{ hasShop: boolean; hasDemonstration: boolean }[]>`
    SELECT has_shop AS "hasShop", has_demonstration AS "hasDemonstration" FROM first_run()`;
  return found ?? { hasShop: false, hasDemonstration: false };
}
