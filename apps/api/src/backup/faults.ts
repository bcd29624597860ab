import { CannotStart } from '../platform/cannot-start';

/** What can be wrong with the file of a backup, each in one sentence for whoever runs the server. */
export type BackupFaults = ReturnType<typeof faultsOf>;

export const faultsOf = (file: string) => ({
  missing: () => new CannotStart(`There is no file ${file} that can be read: name the backup to restore.`),
  foreign: () => new CannotStart(`${file} is not a backup of Larderbook: name the file that npm run backup wrote.`),
  cutShort: () =>
    new CannotStart(`${file} is cut short, its end is missing: copy it again from where it was kept, or take another backup.`),
  altered: () =>
    new CannotStart(
      `${file} is not as it was written, something in it was damaged or changed: take another copy of it, or another backup.`,
    ),
  isSealed: () => new CannotStart(`${file} is sealed: set LARDERBOOK_PASSPHRASE to the passphrase it was made with.`),
  wrongPassphrase: () => new CannotStart(`LARDERBOOK_PASSPHRASE is not the passphrase that ${file} was made with.`),
  laterFormat: () =>
    new CannotStart(`${file} was written by a later Larderbook in a form that this version cannot read: use that version.`),
  laterBook: (migration: string) =>
    new CannotStart(`${file} was made by a later Larderbook (it has ${migration}, which this version does not know): use that version.`),
  otherTables: (table: string) =>
    new CannotStart(`${file} does not fit the tables of this Larderbook (${table} is another): use the version that made it.`),
});
