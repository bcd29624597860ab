import type { InputOf, ReplyOf, RouteShape } from '@larderbook/contracts';
import { v7 } from 'uuid';

/** Sends one request as the named person, at the moment the story has reached; from a tablet, or the station named. */
export type Send = <R extends RouteShape>(route: R, input: InputOf<R>, as: string, at: Date, station?: string) => Promise<ReplyOf<R>>;

type Event = { at: Date; order: number; happen: () => Promise<void> };
/** From which tablet, and when it was taken, if that is not when it is entered. */
type Where = { station?: string; taken?: Date };

/** Things that happen at their moment. They may be written down in any order; they are told in the order of time. */
export class Story {
  private readonly events: Event[] = [];

  constructor(private readonly send: Send) {}

  /** Something a person records at a moment; `input` is given when it was taken, `then` sees the answer. */
  tell<R extends RouteShape>(at: Date, as: string, route: R, { station, taken = at }: Where = {}) {
    return {
      with: (input: (takenAt: string) => InputOf<R>, then?: (reply: ReplyOf<R>) => void): void => {
        const happen = async () => {
          const reply = await this.send(route, input(instantOf(taken)), as, at, station);
          then?.(reply);
        };
        this.events.push({ at, order: this.events.length, happen });
      },
    };
  }

  async run(progress?: (done: number, all: number) => void): Promise<void> {
    const inOrder = [...this.events].sort((a, b) => a.at.getTime() - b.at.getTime() || a.order - b.order);
    for (const [index, event] of inOrder.entries()) {
      await event.happen();
      progress?.(index + 1, inOrder.length);
    }
  }
}

export const newId = (at: Date): string => v7({ msecs: at.getTime() });
export const minutesAfter = (moment: Date, minutes: number): Date => new Date(moment.getTime() + minutes * 60_000);
export const instantOf = (moment: Date): string => moment.toISOString();
