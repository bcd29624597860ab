import { Injectable, Logger } from '@nestjs/common';
import { HttpAdapterHost } from '@nestjs/core';
import { addPerson, type Role } from '@larderbook/contracts';
import type { FastifyInstance } from 'fastify';
import { v7 } from 'uuid';
import { demoPassword, establishment, people } from '../../../../prisma/demo/shop';
import { minutesAfter } from '../../../../prisma/demo/story';
import { twoMonths } from '../../../../prisma/demo/two-months';
import { RecordOnce } from '../ledger/record-once';
import { foundEstablishment } from '../shop/found-establishment';
import { hashPassword } from '../shop/password-hash';
import { Clock } from '../platform/clock';
import { apiClient, type Transport } from './api-client';

/** The id is fixed, so that opening the demonstration twice finds the first. */
const establishmentId = '01990000-0000-7000-8000-00000000d3a0';
const beforeTheStory = -66 * 24 * 60;

/** A new demonstration first lives its two months. */
@Injectable()
export class OpenDemonstration {
  /** Only shown; nothing depends on it. */
  progress = { done: 0, all: 0 };
  private readonly log = new Logger('demonstration');
  /** Lets two taps on this process wait for one story; the database keeps it single. */
  private telling?: Promise<void>;

  constructor(
    private readonly once: RecordOnce,
    private readonly clock: Clock,
    private readonly host: HttpAdapterHost,
  ) {}

  async run() {
    this.telling ??= this.open();
    await this.telling.catch((failure: unknown) => {
      this.telling = undefined;
      throw failure;
    });
    return { signIns: people.map(signInOf), lookAt };
  }

  private async open(): Promise<void> {
    const now = this.clock.now();
    const isNew = await this.found(minutesAfter(now, beforeTheStory));
    if (!isNew) return;
    const send = apiClient(this.inside, (moment, work) => this.clock.at(moment, work), demoPassword);
    for (const { userName, name, roles } of people.slice(1)) {
      await send(
        addPerson,
        { personId: v7(), userName, name, roles, password: demoPassword },
        people[0]?.userName ?? '',
        minutesAfter(now, beforeTheStory),
      );
    }
    await twoMonths(send, now, (done, all) => {
      this.progress = { done, all };
      if (done % 200 === 0) this.log.log(`${done} of ${all} entries of the demonstration are in`);
    });
  }

  /** Calls this process directly: the story's moment holds only here. */
  private readonly inside: Transport = async (method, url, headers, payload) => {
    const server = this.host.httpAdapter.getInstance<FastifyInstance>();
    const reply = await server.inject({ method: method as 'GET', url, headers, payload });
    return { status: reply.statusCode, body: reply.body, cookies: [reply.headers['set-cookie'] ?? []].flat() };
  };

  /** False when the establishment was there already. */
  private async found(at: Date): Promise<boolean> {
    const [owner] = people;
    if (!owner) throw new Error('The demonstration has no owner');
    const by = { personId: v7(), establishmentId, station: '' };
    const passwordHash = await hashPassword(demoPassword);
    let isNew = false;
    await this.clock.at(at, () =>
      this.once.run(by, { id: establishmentId, kind: 'establishment', request: { demonstration: true } }, async (tx, when) => {
        await foundEstablishment(
          tx,
          { establishmentId, demonstration: true, details: establishment, owner: { ...owner, personId: by.personId, passwordHash } },
          when,
        );
        isNew = true;
        return {};
      }),
    );
    return isNew;
  }
}

const signInOf = ({ userName, name, roles }: { userName: string; name: string; roles: Role[] }) => ({
  role: roles[0] ?? 'operator',
  name,
  userName,
  password: demoPassword,
});

const lookAt = [
  'Today: one lot is chilling now, one is drying, one is on hold, one waits for review, one is cleared to ship.',
  'The lot on hold: its chill missed a limit and nobody has written the corrective action yet.',
  'The lot that waits for review: sign in as the reviewer and clear it.',
  'A decision in two parts: under Deviations, the roast that cooled too slowly behind a door that had not latched – some of it condemned and destroyed, the rest released on a letter, packed and shipped.',
  'A delivery put right: under Receiving, the pork shoulder of about ten days ago, its weight struck through with the reason beside it.',
  'A late entry: in the stew of about a week ago, the last readings of the chill came an hour after they were taken; both times stand there. The sausage of about two weeks ago has a reading that was not of the core, and says so.',
  'Lots: the dry sausage that was shipped – frozen, fermented by degree-hours, dried by weight; the kettle pulled pork – judged also by what the cook killed and what grew while it cooled.',
  'Trace: type the supplier lot of any delivery of pork and see who has its packages.',
  'Papers: print a lot record and the monitoring log of a chill.',
];
