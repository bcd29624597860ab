import {
  recordDisposition,
  releaseBases,
  type correctDisposition,
  type Decision,
  type Deviation,
  type InputOf,
  type ProductConcerned,
} from '@larderbook/contracts';
import { massFromGrams, massOf, type EnteredMass } from '@larderbook/haccp';
import { useState } from 'react';
import { useRecording, type Progress } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Caution } from '../../ui/caution';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Stack } from '../../ui/stack';
import { Tiles } from '../../ui/tiles';
import { basisWords, decisionsFor, decisionWords } from './decision-words';
import { HowMuch } from './how-much';
import { WhyDecided } from './why-decided';
import { lesser, sayLeftToDecide, sayWeight } from './weights';

type Basis = (typeof releaseBases)[number];
type Chosen = { product?: ProductConcerned; decision?: Decision; weight?: EnteredMass; basis?: Basis };

/** What becomes of the product. */
export function Decide({ deviation, onClose }: { deviation: Deviation; onClose: () => void }) {
  const recording = useRecording(recordDisposition);
  return (
    <Deciding
      deviation={deviation}
      products={deviation.products}
      speaksFor={(product, weight, most) => spokenFor(deviation, product, weight, most)}
      recording={recording}
      onKeep={(made, words) => void recording.save({ dispositionId: recording.id, ...made }, words)}
      onClose={onClose}
    />
  );
}

type Made = InputOf<typeof correctDisposition>['disposition'];
type DecidingProps = {
  deviation: Deviation;
  /** What may be decided about, with how much of each. */
  products: ProductConcerned[];
  speaksFor: (product: ProductConcerned, weight: EnteredMass, most: Weight) => Named[];
  recording: Progress;
  onKeep: (made: Made, words: string) => void;
  onClose: () => void;
};

/** A decision, one step at a time: about which product, what, how much of it, on what basis, and why. */
export function Deciding({ deviation, products, speaksFor: spokenForBy, recording, onKeep, onClose }: DecidingProps) {
  const open = products.filter(({ undecided }) => undecided.grams > 0);
  const [chosen, setChosen] = useState<Chosen>({});
  const product = chosen.product ?? (open.length === 1 ? open[0] : undefined);
  const { decision, weight, basis } = chosen;

  if (recording.saved) return <KeptDialog title="Decided" state={recording.saved.state} onClose={onClose} />;
  if (!product) return <WhichProduct open={open} onChoose={(which) => setChosen({ product: which })} onClose={onClose} />;
  if (!decision) return <WhichDecision product={product} onChoose={(which) => setChosen({ product, decision: which })} onClose={onClose} />;
  const { title } = decisionWords[decision];
  if (!weight)
    return (
      <HowMuch
        title={title}
        most={mostFor(decision, product)}
        onBack={() => setChosen({ product: chosen.product })}
        onWeight={(much) => setChosen({ ...chosen, weight: { value: much.value, unit: much.unit } })}
        onClose={onClose}
      />
    );
  const back = () => setChosen({ ...chosen, weight: undefined, basis: undefined });
  if (decision === 'release' && !basis)
    return (
      <Dialog title={`${title} ${sayWeight(weight)}`} onClose={onClose} actions={<Button onClick={back}>Back</Button>}>
        <Tiles
          label="On what does it stand?"
          tiles={releaseBases.map((each) => ({
            key: each,
            title: basisWords[each].title,
            lines: [basisWords[each].detail],
            onTap: () => setChosen({ ...chosen, basis: each }),
          }))}
        />
      </Dialog>
    );
  const { lotId, receiptId } = product;
  const speaksFor = spokenForBy(product, weight, mostFor(decision, product));
  const deviationIds = speaksFor.map(({ deviationId }) => deviationId);
  const save = (reason: string) =>
    onKeep(
      { deviationIds, lotId, receiptId, decision, weight, reason, basis },
      `Deviation ${deviation.number}: ${decision} ${sayWeight(weight)}`,
    );
  return (
    <WhyDecided
      title={`${title} ${sayWeight(weight)}`}
      basis={basis && basisWords[basis].title}
      numbers={speaksFor.map(({ number }) => number)}
      recording={recording}
      onBack={basis ? () => setChosen({ ...chosen, basis: undefined }) : back}
      onKeep={save}
      onClose={onClose}
    />
  );
}

type Choosing<Choice> = { onChoose: (choice: Choice) => void; onClose: () => void };

function WhichProduct({ open, onChoose, onClose }: Choosing<ProductConcerned> & { open: ProductConcerned[] }) {
  return (
    <Dialog title="Of which product?" onClose={onClose}>
      <Tiles
        label="Products"
        tiles={open.map((product) => ({
          key: product.lotId ?? product.receiptId ?? '',
          title: `${product.lotId ? 'Lot' : 'Delivery'} ${product.code}`,
          lines: [product.what, `${sayLeftToDecide(product)} to decide`],
          onTap: () => onChoose(product),
        }))}
      />
    </Dialog>
  );
}

function WhichDecision({ product, onChoose, onClose }: Choosing<Decision> & { product: ProductConcerned }) {
  return (
    <Dialog title="What becomes of the product?" onClose={onClose}>
      <Stack>
        <p>
          <strong>{sayLeftToDecide(product)}</strong> of {product.code} still to decide. A part of it may be decided now, the rest
          afterwards.
        </p>
        <Tiles
          label="Decisions"
          tiles={decisionsFor(product).map((each) => ({
            key: each,
            title: decisionWords[each].title,
            lines: [decisionWords[each].detail],
            onTap: () => onChoose(each),
          }))}
        />
        <Caution>
          Larderbook keeps the decision and what it is based on; it does not say that product is safe. That is for the responsible person
          and, where it is needed, a licensed process authority and the inspector.
        </Caution>
      </Stack>
    </Dialog>
  );
}

type Weight = ProductConcerned['undecided'];

/** What has left can only be let go or called back; what is here only let go, reworked, condemned or sent back. */
function mostFor(decision: Decision, { undecided, here, left }: ProductConcerned): Weight {
  if (decision === 'release') return undecided;
  return lesser(undecided, decision === 'recall' ? left : here);
}

type Named = { deviationId: string; number: number };

/** This deviation, and every other open one of the product that has as much to decide: nobody decides it twice. */
function spokenFor(deviation: Deviation, product: ProductConcerned, weight: EnteredMass, most: Weight): Named[] {
  const isAll = weight.value === most.value && weight.unit === most.unit;
  const mass = isAll ? massFromGrams(most.grams.toFixed(9)) : massOf(weight);
  return [deviation, ...product.alsoOpen.filter(({ undecided }) => massFromGrams(undecided.grams.toFixed(9)) >= mass)];
}
