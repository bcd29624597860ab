import { Injectable } from '@nestjs/common';
import type { InputOf, ReplyOf, voidRecord } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { voidLasting } from './void-lasting';
import { voidOnLot } from './void-on-lot';

type Input = InputOf<typeof voidRecord>;

/** What was recorded and never was. It stays, struck through with the reason, and everything is judged without it. */
@Injectable()
export class VoidRecord {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof voidRecord>> {
    const { voidId, what, amends } = input;
    return this.once.run(by, { id: voidId, kind: 'void', subject: amends, request: input }, async (tx, at) => ({
      voidId,
      deviationId: await strike(tx, input, what, by, at),
    }));
  }
}

const strike = (tx: Tx, input: Input, what: Input['what'], by: Person, at: Date): Promise<string | undefined> =>
  what === 'reading' || what === 'input' || what === 'weighing'
    ? voidOnLot(tx, input, what, by, at)
    : voidLasting(tx, input, what, by, at);
