import { Module, type DynamicModule } from '@nestjs/common';
import { APP_FILTER } from '@nestjs/core';
import { Clock } from './clock';
import { Database, DATABASE_ADDRESS, type DatabaseAddress } from './database';
import { HealthController } from './health.controller';
import { OpenApiController } from './openapi.controller';
import { ProblemFilter } from './problem-filter';
import { SESSION_SECRET, type SessionSecret } from './session-secret';

/** Only tests and the demonstration bring a clock of their own. */
export type Open = DatabaseAddress & SessionSecret & { clock?: Clock };

/** The module is global, so that a room imports only the rooms before it. */
@Module({})
export class PlatformModule {
  static on({ secret, clock, ...address }: Open): DynamicModule {
    return {
      module: PlatformModule,
      global: true,
      controllers: [HealthController, OpenApiController],
      providers: [
        { provide: Clock, useValue: clock ?? new Clock() },
        Database,
        { provide: DATABASE_ADDRESS, useValue: address },
        { provide: SESSION_SECRET, useValue: secret },
        { provide: APP_FILTER, useClass: ProblemFilter },
      ],
      exports: [Clock, Database, SESSION_SECRET],
    };
  }
}
