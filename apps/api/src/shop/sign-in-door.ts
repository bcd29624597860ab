import { Inject, Injectable } from '@nestjs/common';
import { betterAuth } from 'better-auth';
import { prismaAdapter } from 'better-auth/adapters/prisma';
import { APIError } from 'better-auth/api';
import { username } from 'better-auth/plugins/username';
import { v7 } from 'uuid';
import type { PrismaClient } from '../generated/prisma/client';
import { Clock } from '../platform/clock';
import { Database } from '../platform/database';
import { SESSION_SECRET } from '../platform/session-secret';
import { hashPassword, isPassword } from './password-hash';
import { cookiePrefix } from './session-cookie';

/** A tablet stays signed in for a week. */
const sessionSeconds = 7 * 24 * 3600;

type Entered = { token: string; cookies: string[] };

/** The library checks passwords and signs cookies; none of its routes are open. */
@Injectable()
export class SignInDoor {
  private readonly library: ReturnType<typeof library>;

  constructor(
    private readonly db: Database,
    clock: Clock,
    @Inject(SESSION_SECRET) secret: string,
  ) {
    this.library = library(db.door, clock, secret);
  }

  /** Undefined for an unknown user name or a wrong password; both take equally long. */
  async enter(userName: string, password: string, headers: Headers): Promise<Entered | undefined> {
    try {
      const body = { username: userName, password };
      const entered = await this.library.api.signInUsername({ body, headers, returnHeaders: true });
      return { token: entered.response.token, cookies: entered.headers.getSetCookie() };
    } catch (refusal) {
      if (refusal instanceof APIError && refusal.statusCode < 500) return undefined;
      throw refusal;
    }
  }

  /** Returns cookies that wipe the session. It is ended first, because the library hides a failure to end it. */
  async leave(token: string, headers: Headers): Promise<string[]> {
    await this.end(token);
    const { headers: reply } = await this.library.api.signOut({ headers, returnHeaders: true });
    return reply.getSetCookie();
  }

  async end(token: string): Promise<void> {
    await this.db.door.signInSession.deleteMany({ where: { token } });
  }
}

function library(door: PrismaClient, clock: Clock, secret: string) {
  const establishmentId = { type: 'string', required: true, input: false } as const;
  return betterAuth({
    appName: 'Larderbook',
    secret,
    baseURL: 'http://localhost', // named only: the library serves nothing and sends no mail
    database: prismaAdapter(door, { provider: 'postgresql' }),
    user: { modelName: 'signIn', additionalFields: { establishmentId } },
    session: { modelName: 'signInSession', additionalFields: { establishmentId }, expiresIn: sessionSeconds },
    account: { modelName: 'signInAccount', additionalFields: { establishmentId } },
    verification: {
      modelName: 'signInVerification',
      additionalFields: { establishmentId: { ...establishmentId, required: false } },
    },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true, // set-up and the owner make accounts
      minPasswordLength: 1, // a short password is simply wrong; the contract judges new ones
      maxPasswordLength: 200,
      password: { hash: hashPassword, verify: ({ hash, password }) => isPassword(password, hash) },
    },
    plugins: [username({ minUsernameLength: 1, maxUsernameLength: 200, usernameValidator: () => true })],
    databaseHooks: {
      session: {
        create: {
          before: async (session) => {
            const { establishmentId } = await door.signIn.findUniqueOrThrow({ where: { id: session.userId } });
            const expiresAt = new Date(clock.now().getTime() + sessionSeconds * 1000);
            return { data: { ...session, establishmentId, expiresAt } };
          },
        },
      },
    },
    advanced: { cookiePrefix, useSecureCookies: false, database: { generateId: () => v7() } },
    logger: { disabled: true }, // a wrong password is no event for the log; failures reach the problem filter
    telemetry: { enabled: false },
  });
}
