import { Controller, Get, ServiceUnavailableException } from '@nestjs/common';
import { WithoutContract } from './contract-route';
import { Database } from './database';

/** What watches the process asks here, without signing in. */
@Controller()
export class HealthController {
  constructor(private readonly db: Database) {}

  @WithoutContract()
  @Get('health')
  health() {
    return { status: 'up' };
  }

  @WithoutContract()
  @Get('ready')
  async ready() {
    try {
      await this.db.door.$queryRaw`SELECT 1`;
    } catch (failure) {
      throw new ServiceUnavailableException('The database does not answer', { cause: failure });
    }
    return { status: 'ready' };
  }
}
