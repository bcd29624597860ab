import * as contract from '@larderbook/contracts';
import { v7 } from 'uuid';
import { ask } from '../support/ask';
import type { TestApp } from '../support/start-app';
import type { SausageKitchen } from './a-sausage-kitchen';
import { aSausageLot } from './a-sausage-lot';
import { done, type Worker } from './a-shop';

const minute = 60_000;
export type Input = contract.InputOf<typeof contract.clarifyReadings>;
type Kept = contract.ReplyOf<typeof contract.clarifyReadings>;
type Read = [minutes: number, fahrenheit: number, arrives?: number];

/** A fall of 41 °F within a minute, which no piece makes: the probe lay in the air of the room. */
export const fallen: Read[] = [
  [0, 140],
  [30, 100],
  [60, 78],
  [61, 37],
  [62, 77.5],
  [120, 50],
  [200, 39],
];

export type SaidOfReadings = ReturnType<typeof saidOfReadings>;

/** Chills and cooks of a kitchen, and what people say of their readings. */
export function saidOfReadings(kitchen: SausageKitchen, larder: TestApp) {
  /** A cooked lot whose chill is read at these minutes; each reading is entered when it is taken, unless said otherwise. */
  async function chilled(reads: Read[], { finish = true } = {}) {
    const { lotId } = await aSausageLot(kitchen, larder, 'cooked');
    const start = larder.clock.now().getTime();
    const ids: string[] = [];
    for (const [minutes, value, arrives = minutes] of reads) {
      larder.clock.moveTo(new Date(start + arrives * minute));
      const takenAt = new Date(start + minutes * minute).toISOString();
      ids.push((await kitchen.read(lotId, 'chill', { entered: { value, unit: '°F' }, takenAt, sure: true })).readingId);
    }
    const end = async (minutes: number) => {
      larder.clock.moveTo(new Date(start + minutes * minute));
      const stage = { stageEndId: v7(), lotId, controlPointId: kitchen.points.chill, takenAt: kitchen.now() };
      return done<contract.ReplyOf<typeof contract.endStage>>(ask(kitchen.operator, contract.endStage, stage));
    };
    if (finish) await end(Math.max(...reads.map(([minutes, , arrives = 0]) => Math.max(minutes, arrives))) + 1);
    return { lotId, ids, start, end };
  }

  const said = (lotId: string, readingIds: string[], fields: Partial<Input> = {}): Input => ({
    clarificationId: v7(),
    lotId,
    controlPointId: kitchen.points.chill,
    readingIds,
    word: 'not of the core',
    reason: 'The probe lay on the table.',
    takenAt: kitchen.now(),
    ...fields,
  });
  const send = (input: Input, by: Worker = kitchen.operator) => ask(by, contract.clarifyReadings, input);
  const keep = (input: Input, by?: Worker) => done<Kept>(send(input, by));
  const problem = ({ status, body }: Awaited<ReturnType<typeof send>>) => [status, body.code];
  const chillOf = async (lotId: string) => {
    const chill = (await kitchen.showLot(lotId)).controlPoints[2];
    if (!chill) throw new Error('The plan has no chill.');
    return chill;
  };
  const stands = async (lotId: string) => (await chillOf(lotId)).stands;

  async function aCookOf(values: number[], minutes: number[]) {
    const { lotId } = await aSausageLot(kitchen, larder, 'cured');
    const start = larder.clock.now().getTime();
    const ids: string[] = [];
    for (const [index, value] of values.entries()) {
      larder.clock.moveTo(new Date(start + (minutes[index] ?? 0) * minute));
      ids.push((await kitchen.read(lotId, 'cook', { entered: { value, unit: '°F' }, sure: true })).readingId);
    }
    const end = { stageEndId: v7(), lotId, controlPointId: kitchen.points.cook, takenAt: kitchen.now() };
    await done(ask(kitchen.operator, contract.endStage, end));
    return { lotId, ids };
  }

  return { chilled, aCookOf, said, send, keep, problem, chillOf, stands };
}
