import type { ControlPointOnLot, Lot } from '@larderbook/contracts';
import { isOfKind } from '@larderbook/haccp';
import { useSay } from '../../../ui/voice';
import { doingOf } from '../next/next-card';
import { nextThing } from '../next/next-thing';
import { Clarify } from '../clarifying/clarify';
import { Correct } from './correct';
import type { Doing } from './doing';
import { FinishStage } from './finish-stage';
import { NoCarrier } from './no-carrier';
import { Pack } from './pack';
import { PutInMeat } from './put-in-meat';
import { RecordAnswer } from './record-answer';
import { RecordNumber } from './record-number';
import { Report } from './report';
import { TakeOut } from './take-out';
import { Weigh } from './weigh';

type RecordingDialogProps = { lot: Lot; doing: Doing; onDo: (doing: Doing) => void; onClose: () => void };

export function RecordingDialog({ lot, doing, onDo, onClose }: RecordingDialogProps) {
  const onNext = useOnward(lot, doing, onDo);
  switch (doing.what) {
    case 'put in meat':
      return <PutInMeat lot={lot} onNext={onNext} onClose={onClose} />;
    case 'weigh':
      return <Weigh key={doing.itemId} lot={lot} itemId={doing.itemId} onNext={onNext} onClose={onClose} />;
    case 'record':
    case 'finish':
      return <AtPoint lot={lot} doing={doing} onDo={onDo} onClose={onClose} />;
    case 'pack':
      return <Pack lot={lot} onClose={onClose} />;
    case 'take out':
      return <TakeOut lot={lot} onClose={onClose} />;
    case 'report':
      return <Report lot={lot} controlPointId={doing.controlPointId} onClose={onClose} />;
    case 'correct':
      return <Correct lot={lot} line={doing.line} onClose={onClose} />;
    case 'clarify':
      return <Clarify lot={lot} of={doing} onClose={onClose} />;
  }
}

function AtPoint({ lot, doing, onDo, onClose }: RecordingDialogProps & { doing: Extract<Doing, { what: 'record' | 'finish' }> }) {
  const point = lot.controlPoints.find(({ controlPoint }) => controlPoint.controlPointId === doing.controlPointId);
  if (!point) return null;
  if (doing.what === 'finish') return <FinishStage lot={lot} point={point} onClose={onClose} />;
  if (point.controlPoint.takenAs === 'attestation') return <RecordAnswer lot={lot} point={point} onClose={onClose} />;
  if (point.controlPoint.takenAs === 'weighings') {
    const carriers = carriersOf(lot, point);
    if (carriers.length === 0)
      return (
        <NoCarrier
          point={point.controlPoint}
          onReport={() => onDo({ what: 'report', controlPointId: doing.controlPointId })}
          onClose={onClose}
        />
      );
    return <Weigh lot={lot} itemId={carriers.length === 1 ? carriers[0]?.itemId : undefined} onClose={onClose} />;
  }
  return (
    <RecordNumber
      lot={lot}
      point={point}
      onFinish={() => onDo({ what: 'finish', controlPointId: doing.controlPointId })}
      onClose={onClose}
    />
  );
}

function carriersOf(lot: Lot, { controlPoint }: ControlPointOnLot) {
  const substances = controlPoint.limits.flatMap(({ limit }) => (isOfKind(limit, 'concentration') ? [limit.substance] : []));
  return lot.targets.filter(({ substance }) => substance && substances.includes(substance));
}

/** The next weighing is offered once the lot's sheet shows this one. */
function useOnward(lot: Lot, doing: Doing, onDo: (doing: Doing) => void) {
  const say = useSay('lot-forms');
  const next = nextThing(lot);
  if (next.do !== 'weigh') return undefined;
  const isSame = doing.what === 'weigh' && doing.itemId === next.target.itemId;
  return isSame ? undefined : { words: say('next-item', { item: next.target.itemName }), go: () => onDo(doingOf(next)) };
}
