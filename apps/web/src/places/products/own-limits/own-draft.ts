import { criticalLimit, ownLimitRow, type OwnLimitRow } from '@larderbook/contracts';
import { forces, purposes } from '@larderbook/haccp';
import { z } from 'zod';
import { useSession } from '../../../api/session';
import { newId } from '../../../outbox/new-id';
import { useKeptDraft } from '../kept-draft';

const text = z.string();
const unchosen = z.literal('');

const rowDraft = ownLimitRow.extend({
  key: z.uuid(),
  /** Of a figure that another set has on the same matter; a new one gets its own when it is saved. */
  rowId: text.optional(),
  title: text,
  purpose: z.enum(purposes).or(unchosen),
  limit: criticalLimit.optional(),
  paragraph: text,
  force: z.enum(forces).or(unchosen),
  validFrom: text,
  validUntil: text,
  note: text,
});
export type RowDraft = z.output<typeof rowDraft>;

/** An edition while it is written: fields may still be empty. The id belongs to exactly these words. */
const ownDraft = z.object({
  ownSetId: z.uuid(),
  /** The edition it takes the place of; none for a set begun anew. */
  replaces: text.optional(),
  /** The edition it began from. */
  after: text.optional(),
  /** A save was tried: from then on what is missing is marked. */
  tried: z.boolean(),
  title: text,
  edition: text,
  validFrom: text,
  rows: z.array(rowDraft),
});
export type OwnDraft = z.output<typeof ownDraft>;

/** The edition that is being written on this device for the shop that is open. */
export const useOwnDraft = () => useKeptDraft(ownDraft, `own-limits.${useSession()?.establishmentId ?? ''}`);

/** A figure as it stands in another set, to go on with. */
export const draftOfRow = ({ validUntil = '', note = '', ...row }: OwnLimitRow): RowDraft => ({
  ...row,
  key: newId(),
  validUntil,
  note,
});

/** What a shop has written itself is its own validation until it says otherwise. */
export const emptyRow = (today: string): RowDraft => ({
  key: newId(),
  title: '',
  purpose: '',
  paragraph: '',
  force: 'industry',
  known: 'from memory',
  validFrom: today,
  validUntil: '',
  conditions: [],
  note: '',
});

export const emptyDraft = (today: string): OwnDraft => ({
  ownSetId: newId(),

  tried: false,
  title: '',
  edition: '',
  validFrom: today,
  rows: [],
});

type Before = { setId: string; title: string; edition: string };

/** The next edition of a set, with everything the last one holds. */
export const draftAfter = ({ setId, title, edition }: Before, rows: OwnLimitRow[], today: string): OwnDraft => ({
  ...emptyDraft(today),
  replaces: setId,
  after: edition,
  title,
  rows: rows.map(draftOfRow),
});

/** Other words are another record. */
export const edited = (draft: OwnDraft, change: Partial<OwnDraft>): OwnDraft => ({
  ...draft,
  ...change,
  ownSetId: newId(),
});
