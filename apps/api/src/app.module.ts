import { Module, type DynamicModule } from '@nestjs/common';
import { LedgerModule } from './ledger/ledger.module';
import type { DatabaseAddress } from './platform/database';
import { PeopleModule } from './people/people.module';
import { PlatformModule } from './platform/platform.module';
import type { SessionSecret } from './platform/session-secret';

/** The rooms of the API, in the order in which they may use one another. */
@Module({})
export class AppModule {
  static on(address: DatabaseAddress & SessionSecret): DynamicModule {
    return { module: AppModule, imports: [PlatformModule.on(address), LedgerModule, PeopleModule] };
  }
}
