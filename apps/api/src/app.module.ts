import { Module, type DynamicModule } from '@nestjs/common';
import { LedgerModule } from './ledger/ledger.module';
import type { DatabaseAddress } from './platform/database';
import { PlatformModule } from './platform/platform.module';

/** The rooms of the API, in the order in which they may use one another. */
@Module({})
export class AppModule {
  static on(address: DatabaseAddress): DynamicModule {
    return { module: AppModule, imports: [PlatformModule.on(address), LedgerModule] };
  }
}
