import type { ControlPoint, Judged } from '@larderbook/contracts';
import { wordsFrom } from './clarifications.queries';
import { judgeControlPoint } from './judge-control-point';
import { readingsThatCount, type LotRows } from './lot-rows';
import { recordsAt } from './records-at';

/**
 * People decided about the curve as it stood then; it may have grown since.
 * @param closedSeq the ledger line of the closing
 */
export function judgedWhenClosed(point: ControlPoint, rows: LotRows, closedSeq: bigint): Judged[] {
  const wasThere = ({ id }: { id: string }) => (rows.order.get(id) ?? closedSeq) < closedSeq;
  const words = wordsFrom(rows.clarifications.filter(wasThere));
  const readings = readingsThatCount(rows.readings.filter(wasThere));
  const asSaid = readings.map((reading) => ({ ...reading, word: words.get(reading.id) }));
  return judgeControlPoint(
    point,
    recordsAt(point, asSaid, { ...rows, stageEnds: rows.stageEnds.filter(({ rowId }) => wasThere({ id: rowId })) }),
  ).judged;
}
