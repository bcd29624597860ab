import { Module } from '@nestjs/common';
import { APP_GUARD } from '@nestjs/core';
import { LedgerModule } from '../ledger/ledger.module';
import { AddPerson } from './add-person';
import { ChangeEstablishment } from './change-establishment';
import { ChangePassword } from './change-password';
import { GrantRoles } from './grant-roles';
import { Guard } from './guard';
import { PeopleController } from './people.controller';
import { ResetPassword } from './reset-password';
import { SessionController } from './session.controller';
import { SetUpShop } from './set-up-shop';
import { SignIn } from './sign-in';
import { SignInDoor } from './sign-in-door';
import { SignInRateLimit } from './sign-in-rate-limit';

@Module({
  imports: [LedgerModule],
  controllers: [SessionController, PeopleController],
  providers: [
    { provide: APP_GUARD, useClass: Guard },
    SignInDoor,
    SignInRateLimit,
    SignIn,
    SetUpShop,
    ChangePassword,
    AddPerson,
    GrantRoles,
    ResetPassword,
    ChangeEstablishment,
  ],
})
export class ShopModule {}
