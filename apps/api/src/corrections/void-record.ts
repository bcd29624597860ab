import { Injectable } from '@nestjs/common';
import type { InputOf, ReplyOf, voidRecord } from '@larderbook/contracts';
import { RecordOnce } from '../ledger/record-once';
import type { Tx } from '../platform/database';
import type { Person } from '../platform/person';
import { voidAction } from './void-action';
import { voidDestruction, voidDisposition } from './void-decision';
import { voidLasting } from './void-lasting';
import { voidOnLot } from './void-on-lot';

type Input = InputOf<typeof voidRecord>;

/** The record stays, struck through; everything is judged without it. */
@Injectable()
export class VoidRecord {
  constructor(private readonly once: RecordOnce) {}

  run(input: Input, by: Person): Promise<ReplyOf<typeof voidRecord>> {
    const { voidId, amends } = input;
    return this.once.run(by, { id: voidId, kind: 'void', subject: amends, request: input }, async (tx, at) => ({
      voidId,
      deviationId: (await strike(tx, input, by, at)) || undefined,
    }));
  }
}

function strike(tx: Tx, input: Input, by: Person, at: Date): Promise<string | undefined | void> {
  switch (input.what) {
    case 'reading':
    case 'input':
    case 'weighing':
      return voidOnLot(tx, input, input.what, by, at);
    case 'action':
      return voidAction(tx, input, by, at);
    case 'disposition':
      return voidDisposition(tx, input, by, at);
    case 'destruction':
      return voidDestruction(tx, input, by, at);
    default:
      return voidLasting(tx, input, input.what, by, at);
  }
}
