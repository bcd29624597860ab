import { Global, Module } from '@nestjs/common';
import { MissShown } from '../deviations/miss-shown';
import { withMissNow } from './misses-now';

/** Gives the deviations, which stand before the lots, what is missed by the records of now. */
@Global()
@Module({ providers: [{ provide: MissShown, useValue: { show: withMissNow } satisfies MissShown }], exports: [MissShown] })
export class MissShownModule {}
