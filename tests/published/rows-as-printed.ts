import { limitSetById, type Known, type LimitRow } from '@larderbook/haccp';
import { printed } from '../support/told';

/** C was read in the source, S second hand, M is from memory and not confirmed. */
const MARKS: Record<string, Known> = { C: 'read in the source', S: 'second hand', M: 'from memory' };

/** Lines of `id | figure in every unit printed | mark`, retyped beside their source; an indented line goes on. */
export const retyped = (text: string): [id: string, figure: string, known: Known][] =>
  text
    .trim()
    .replaceAll('\n  ', ' ')
    .split('\n')
    .map((line) => {
      const [id = '', figure = '', mark = ''] = line.split(' | ').map((part) => part.trim());
      const known = MARKS[mark];
      if (!known) throw new Error(`no mark in "${line}"`);
      return [id, figure, known];
    });

/** What a set carries under an id, and how it is known; undefined where it has no such row. */
export function carried(set: string, id: string): [figure: string, known: Known] | undefined {
  const row = limitSetById(set)?.rows.find((one) => one.id === id);
  return row && [printed(row.limit), row.known];
}

/** Tables are retyped row by row in other files of this folder; statements are words without a figure. */
export const isRetypedElsewhere = ({ limit }: LimitRow): boolean =>
  limit.kind === 'attestation' || (limit.kind === 'dwell' && limit.rows.length > 1);
