import { randomBytes } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { CannotStart } from '../cannot-start';

/** Only the owner of the data folder can read `secrets.json`. */
export type Passwords = { owner: string; api: string };

export function makePasswords(path: string): Passwords {
  const made = { owner: random(), api: random() };
  writeFileSync(path, JSON.stringify(made, null, 2), { mode: 0o600, flush: true });
  return made;
}

export function readPasswords(path: string): Passwords {
  if (existsSync(path)) return JSON.parse(readFileSync(path, 'utf8')) as Passwords;
  throw new CannotStart(`${path} is missing, which holds the passwords of the database beside it: bring it back from your backup.`);
}

const random = () => randomBytes(24).toString('base64url');
