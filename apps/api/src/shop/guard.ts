import { Inject, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import { Clock } from '../platform/clock';
import { contractOf, isWithoutContract } from '../platform/contract-route';
import { Database } from '../platform/database';
import { setPerson } from '../platform/person';
import { Problem } from '../platform/problem';
import { told } from '../platform/told';
import { SESSION_SECRET } from '../platform/session-secret';
import { voiceFor } from '../platform/voice';
import { tokenOf } from './session-cookie';
import { signedIn } from './signed-in.queries';
import { stationOf } from './station';

@Injectable()
export class Guard implements CanActivate {
  constructor(
    private readonly db: Database,
    private readonly clock: Clock,
    @Inject(SESSION_SECRET) private readonly secret: string,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const contract = contractOf(context);
    if (!contract) return isWithoutContract(context.getHandler());
    const request = context.switchToHttp().getRequest<FastifyRequest>();
    if (contract.method !== 'GET') refuseForeignPages(request);
    if (contract.roles === 'anyone') return true;

    const token = tokenOf(request.headers.cookie, this.secret);
    const person = token && (await signedIn(this.db.door, token, this.clock.now()));
    if (!person) throw new Problem('not-signed-in');
    setPerson(request, { ...person, station: stationOf(request), voice: voiceFor(request, person) });
    if (!contract.roles.some((role) => person.roles.includes(role))) {
      throw new Problem('not-allowed', told('not-your-role', { may: contract.roles.join('_') }));
    }
    return true;
  }
}

/** Another site can make a browser send our cookie, but not this header or our origin. */
function refuseForeignPages({ headers }: FastifyRequest): void {
  if (headers['x-larderbook'] === undefined) throw new Problem('foreign-page', told('writes-carry-a-header'));
  if (headers.origin !== undefined && hostOf(headers.origin) !== headers.host) {
    throw new Problem('foreign-page', told('page-of-elsewhere', { page: headers.origin, here: headers.host ?? '' }));
  }
}

const hostOf = (origin: string): string | undefined => (URL.canParse(origin) ? new URL(origin).host : undefined);
