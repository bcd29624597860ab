import { Injectable } from '@nestjs/common';
import type { InputOf, recordOwnLimits, ReplyOf } from '@larderbook/contracts';
import { ownSet, type LimitSet, type SetFault } from '@larderbook/haccp';
import { RecordOnce } from '../ledger/record-once';
import { Database, type Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { Problem } from '../platform/problem';
import { told, type Told } from '../platform/told';
import { ownEditions, type OwnEdition } from './own-limits.queries';
import { headOf } from './show-limit-set';

/** Plans built on the edition before stay, and are asked to be reassessed. */
@Injectable()
export class RecordOwnLimits {
  constructor(
    private readonly once: RecordOnce,
    private readonly db: Database,
  ) {}

  async run(input: InputOf<typeof recordOwnLimits>, by: Person): Promise<ReplyOf<typeof recordOwnLimits>> {
    const { ownSetId, replaces } = input;
    const sent = { id: ownSetId, kind: 'own limits', request: input };
    await this.once.run(by, sent, async (tx, at) => {
      const before = replaces === undefined ? undefined : await editionToReplace(tx, replaces);
      const { rows, title, edition, validFrom } = soundSet(input, before);
      const made = { establishmentId: by.establishmentId, recordedAt: at, recordedBy: by.personId };
      const dated = { validFrom: new Date(validFrom), replacesId: before?.id };
      await tx.ownLimitSet.create({ data: { ...made, ...dated, id: ownSetId, title, edition, rows: [...rows] } });
      return {};
    });
    const written = await this.db.transaction(by, (tx) => editionOf(tx, ownSetId));
    if (!written) throw new Error(`The limits ${ownSetId} were recorded and are not there`);
    return headOf(written);
  }
}

const editionOf = async (tx: Tx, id: string): Promise<OwnEdition | undefined> =>
  (await ownEditions(tx)).find((edition) => edition.id === id);

/** Throws `not-found`, or `edition-replaced-already`: if two editions replaced one, nobody could say which counts. */
async function editionToReplace(tx: Tx, id: string): Promise<LimitSet> {
  const before = await editionOf(tx, id);
  if (!before) throw new Problem('not-found', told('edition-not-own'));
  const { replacedBy } = before.own;
  const newer = replacedBy === undefined ? undefined : await editionOf(tx, replacedBy);
  if (!newer) return before;
  throw new Problem('edition-replaced-already', told('edition-replaced', { edition: before.edition, newer: newer.edition }));
}

/** Throws `limit-set-faulty` with every fault. */
function soundSet(input: InputOf<typeof recordOwnLimits>, before: LimitSet | undefined): LimitSet {
  const { ownSetId, rows, ...head } = input;
  const given = { ...head, id: ownSetId, rows: rows.map(({ rowId, ...row }) => ({ id: rowId, ...row })) };
  const judged = ownSet(given, before);
  if ('set' in judged) return judged.set;
  const errors = judged.faults.map(({ row, because }) => ({ pointer: placeOf(row, input), ...because }));
  throw new Problem('limit-set-faulty', firstOf(judged.faults, input), errors);
}

/** When an id is used twice, the later row is at fault. */
const placeOf = (row: string | undefined, { rows }: { rows: { rowId: string }[] }): string =>
  row === undefined ? '#/rows' : `#/rows/${rows.findLastIndex(({ rowId }) => rowId === row)}`;

function firstOf([first]: SetFault[], { rows }: { rows: { rowId: string; title: string }[] }): Told[] {
  if (!first) return [];
  const row = rows.find(({ rowId }) => rowId === first.row);
  return [row ? told('cannot-be-used', { name: row.title, said: first.because }) : first.because];
}
