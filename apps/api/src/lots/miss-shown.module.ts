import { Global, Module } from '@nestjs/common';
import { MissShown } from '../deviations/miss-shown';
import { withMissNow } from './misses-now';

/** Deviations may not import lots, so this gives them what is missed now. */
@Global()
@Module({ providers: [{ provide: MissShown, useValue: { show: withMissNow } satisfies MissShown }], exports: [MissShown] })
export class MissShownModule {}
