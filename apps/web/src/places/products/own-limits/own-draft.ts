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
  /** The id of the same matter in another set; a new figure gets its own when it is saved. */
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

const ownDraft = z.object({
  ownSetId: z.uuid(),
  /** Absent for a set begun anew. */
  replaces: text.optional(),
  /** The edition it began from. */
  after: text.optional(),
  /** Once a save was tried, what is missing is marked. */
  tried: z.boolean(),
  title: text,
  edition: text,
  validFrom: text,
  rows: z.array(rowDraft),
});
export type OwnDraft = z.output<typeof ownDraft>;

/** Kept on this device for the shop that is open. */
export const useOwnDraft = () => useKeptDraft(ownDraft, `own-limits.${useSession()?.establishmentId ?? ''}`);

/** Takes a figure over from another set. */
export const draftOfRow = ({ validUntil = '', note = '', ...row }: OwnLimitRow): RowDraft => ({
  ...row,
  key: newId(),
  validUntil,
  note,
});

/** A shop's own figure is its own validation until the shop says otherwise. */
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
