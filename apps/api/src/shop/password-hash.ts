import { hash, verify } from '@node-rs/argon2';

/** Argon2id with 19 MiB, two passes and one lane: the least that OWASP’s Password Storage Cheat Sheet asks for. */
const cost = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

export const hashPassword = (password: string): Promise<string> => hash(password, cost);

export const isPassword = (password: string, hashed: string): Promise<boolean> => verify(hashed, password);
