import { canonicalJson } from '@larderbook/haccp';
import { v7 } from 'uuid';
import type { Tx } from '../platform/database';
import { sha256 } from './sha256';

type SignsInWith = { personId: string; userName: string; passwordHash: string };

export const credentialDigest = (signsInWith: SignsInWith): string => sha256(canonicalJson(signsInWith));

type Made = { establishmentId: string; recordedAt: Date; recordedBy: string };

/** Signing in has tables of its own, which change; what they hold is in the ledger as a digest. */
export async function keepCredential(tx: Tx, made: Made, signsInWith: SignsInWith): Promise<void> {
  const { personId } = signsInWith;
  await tx.credential.create({ data: { ...made, id: v7(), personId, digest: credentialDigest(signsInWith) } });
}

/** `seq` is the line that recorded it, where one did. */
export type CredentialBreak = { person: string; seq?: number };

type Row = {
  personId: string;
  name: string | null;
  seq: bigint | null;
  digest: string | null;
  userName: string | null;
  passwordHash: string | null;
};

/** People whose user name or password is not what the ledger says, the one recorded first on top. */
export async function credentialBreaks(tx: Tx, establishmentId: string): Promise<CredentialBreak[]> {
  const rows = await tx.$queryRaw<Row[]>`
    SELECT coalesce(c.person_id, i.id) AS "personId", coalesce(p.name, i.name) AS name, c.seq, c.digest, i.username AS "userName", a.password AS "passwordHash"
    FROM (SELECT DISTINCT ON (person_id) * FROM credential WHERE establishment_id = ${establishmentId}::uuid
      ORDER BY person_id, seq DESC) c
    FULL JOIN (SELECT * FROM sign_in WHERE establishment_id = ${establishmentId}::uuid) i ON i.id = c.person_id
    LEFT JOIN sign_in_account a ON a.user_id = i.id AND a.provider_id = 'credential'
    LEFT JOIN person p ON p.establishment_id = ${establishmentId}::uuid AND p.id = c.person_id
    ORDER BY c.seq NULLS LAST, 1`;
  return rows
    .filter(({ personId, digest, userName, passwordHash }) =>
      userName === null || passwordHash === null ? true : digest !== credentialDigest({ personId, userName, passwordHash }),
    )
    .map(({ personId, name, seq }) => ({ person: name ?? personId, seq: seq === null ? undefined : Number(seq) }));
}
