import { Controller, Inject, Req, Res } from '@nestjs/common';
import * as contract from '@larderbook/contracts';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Input, Route } from '../platform/contract-route';
import { Database } from '../platform/database';
import { SignedIn, type Person } from '../platform/person';
import { SESSION_SECRET } from '../platform/session-secret';
import { callerOf, setCookies } from './caller';
import { ChangePassword } from './change-password';
import { chooseLanguage } from './choose-language';
import { tokenOf } from './session-cookie';
import { SetUpShop } from './set-up-shop';
import { SignIn, type NewSession } from './sign-in';
import { SignInDoor } from './sign-in-door';
import { firstRun } from './signed-in.queries';
import { stationOf } from './station';

@Controller('api/v1')
export class SessionController {
  constructor(
    private readonly db: Database,
    private readonly door: SignInDoor,
    private readonly setUpShop: SetUpShop,
    private readonly signIn: SignIn,
    private readonly changePassword: ChangePassword,
    @Inject(SESSION_SECRET) private readonly secret: string,
  ) {}

  @Route(contract.firstRun)
  isFirstRun() {
    return firstRun(this.db.door);
  }

  @Route(contract.setUpShop)
  async setUp(
    @Input() input: contract.InputOf<typeof contract.setUpShop>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return begun(await this.setUpShop.run(input, stationOf(request), callerOf(request)), request, reply);
  }

  @Route(contract.signIn)
  async enter(
    @Input() input: contract.InputOf<typeof contract.signIn>,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    return begun(await this.signIn.run(input, callerOf(request)), request, reply);
  }

  @Route(contract.whoIsSignedIn)
  who(@SignedIn() person: Person) {
    return person;
  }

  @Route(contract.signOut)
  async leave(@Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply) {
    setCookies(await this.door.leave(this.tokenOf(request), callerOf(request).headers), request, reply);
    return {};
  }

  @Route(contract.chooseLanguage)
  choose(@Input() { language }: contract.InputOf<typeof contract.chooseLanguage>, @SignedIn() by: Person) {
    return chooseLanguage(this.db.door, by, language);
  }

  @Route(contract.changePassword)
  change(@Input() input: contract.InputOf<typeof contract.changePassword>, @SignedIn() by: Person, @Req() request: FastifyRequest) {
    return this.changePassword.run(input, by, { token: this.tokenOf(request), address: request.ip });
  }

  /** The guard has let the request through, so there is a token. */
  private tokenOf = (request: FastifyRequest): string => tokenOf(request.headers.cookie, this.secret) ?? '';
}

function begun({ person, cookies }: NewSession, request: FastifyRequest, reply: FastifyReply): contract.SignedIn {
  setCookies(cookies, request, reply);
  return person;
}
