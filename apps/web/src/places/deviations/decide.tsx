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
import { codeOf, type SayOf } from '@larderbook/messages';
import { useState } from 'react';
import { useRecording, type Progress } from '../../outbox/use-recording';
import { Button } from '../../ui/button';
import { Caution } from '../../ui/caution';
import { Dialog } from '../../ui/dialog';
import { KeptDialog } from '../../ui/kept-dialog';
import { Stack } from '../../ui/stack';
import { Tiles } from '../../ui/tiles';
import { useSay } from '../../ui/voice';
import { decisionsFor } from './decisions-for';
import { HowMuch } from './how-much';
import { WhyDecided } from './why-decided';
import { leftToDecide, lesser, weightOf } from './weights';

type Basis = (typeof releaseBases)[number];
type Chosen = { product?: ProductConcerned; decision?: Decision; weight?: EnteredMass; basis?: Basis };

export function Decide({ deviation, onClose }: { deviation: Deviation; onClose: () => void }) {
  const say = useSay('settling');
  const recording = useRecording(recordDisposition);
  return (
    <Deciding
      products={deviation.products}
      speaksFor={(product, weight, most) => spokenFor(deviation, product, weight, most)}
      recording={recording}
      onSave={(made, what) =>
        void recording.save({ dispositionId: recording.id, ...made }, say('decided-for', { number: String(deviation.number), what }))
      }
      onClose={onClose}
    />
  );
}

type Made = InputOf<typeof correctDisposition>['disposition'];
type DecidingProps = {
  /** `undecided` is how much of each may be decided. */
  products: ProductConcerned[];
  speaksFor: (product: ProductConcerned, weight: EnteredMass, most: Weight) => Named[];
  recording: Progress;
  onSave: (made: Made, what: string) => void;
  onClose: () => void;
};

export function Deciding({ products, speaksFor: spokenForBy, recording, onSave, onClose }: DecidingProps) {
  const say = useSay('settling');
  const sayShared = useSay('shared');
  const open = products.filter(({ undecided }) => undecided.grams > 0);
  const [chosen, setChosen] = useState<Chosen>({});
  const product = chosen.product ?? (open.length === 1 ? open[0] : undefined);
  const { decision, weight, basis } = chosen;

  if (recording.saved) return <KeptDialog title={say('becomes-of-product')} state={recording.saved.state} onClose={onClose} />;
  if (!product) return <WhichProduct open={open} onChoose={(which) => setChosen({ product: which })} onClose={onClose} />;
  if (!decision) return <WhichDecision product={product} onChoose={(which) => setChosen({ product, decision: which })} onClose={onClose} />;
  if (!weight)
    return (
      <HowMuch
        title={say(`${decision}-title`)}
        most={mostFor(decision, product)}
        onBack={() => setChosen({ product: chosen.product })}
        onWeight={(much) => setChosen({ ...chosen, weight: { value: much.value, unit: much.unit } })}
        onClose={onClose}
      />
    );
  const title = say(`${decision}-weight`, { weight: weightOf(weight) });
  const back = () => setChosen({ ...chosen, weight: undefined, basis: undefined });
  if (decision === 'release' && !basis)
    return (
      <Dialog title={title} onClose={onClose} actions={<Button onClick={back}>{sayShared('back')}</Button>}>
        <Tiles
          label={say('on-what')}
          tiles={releaseBases.map((each) => ({
            key: each,
            title: say(codeOf('basis', each)),
            lines: [say(`${codeOf('basis', each)}-detail`)],
            onTap: () => setChosen({ ...chosen, basis: each }),
          }))}
        />
      </Dialog>
    );
  const { lotId, receiptId } = product;
  const speaksFor = spokenForBy(product, weight, mostFor(decision, product));
  const deviationIds = speaksFor.map(({ deviationId }) => deviationId);
  const save = (reason: string) =>
    onSave({ deviationIds, lotId, receiptId, decision, weight, reason, basis }, say(`${decision}-saved`, { weight: weightOf(weight) }));
  return (
    <WhyDecided
      title={title}
      basis={basis && say(codeOf('basis', basis))}
      numbers={speaksFor.map(({ number }) => number)}
      recording={recording}
      onBack={basis ? () => setChosen({ ...chosen, basis: undefined }) : back}
      onSave={save}
      onClose={onClose}
    />
  );
}

type Choosing<Choice> = { onChoose: (choice: Choice) => void; onClose: () => void };

function WhichProduct({ open, onChoose, onClose }: Choosing<ProductConcerned> & { open: ProductConcerned[] }) {
  const say = useSay('settling');
  return (
    <Dialog title={say('which-product')} onClose={onClose}>
      <Tiles
        label={say('products')}
        tiles={open.map((product) => ({
          key: product.lotId ?? product.receiptId ?? '',
          title: say(product.lotId ? 'lot' : 'delivery', { code: product.code }),
          lines: [product.what, toDecide(product, say)],
          onTap: () => onChoose(product),
        }))}
      />
    </Dialog>
  );
}

function WhichDecision({ product, onChoose, onClose }: Choosing<Decision> & { product: ProductConcerned }) {
  const say = useSay('settling');
  const { weight, all } = leftToDecide(product);
  const { code } = product;
  return (
    <Dialog title={say('becomes-question')} onClose={onClose}>
      <Stack>
        <p>{all ? say('of-all-of-code-to-decide', { weight, all, code }) : say('of-code-to-decide', { weight, code })}</p>
        <Tiles
          label={say('decisions')}
          tiles={decisionsFor(product).map((each) => ({
            key: each,
            title: say(`${each}-title`),
            lines: [say(`${each}-detail`)],
            onTap: () => onChoose(each),
          }))}
        />
        <Caution>{say('not-said-safe')}</Caution>
      </Stack>
    </Dialog>
  );
}

function toDecide(product: ProductConcerned, say: SayOf<'settling'>): string {
  const { weight, all } = leftToDecide(product);
  return all ? say('weight-of-to-decide', { weight, all }) : say('weight-to-decide', { weight });
}

type Weight = ProductConcerned['undecided'];

/** What has left can only be let go or called back; what is here only let go, reworked, condemned or sent back. */
function mostFor(decision: Decision, { undecided, here, left }: ProductConcerned): Weight {
  if (decision === 'release') return undecided;
  return lesser(undecided, decision === 'recall' ? left : here);
}

type Named = { deviationId: string; number: number };

/** Every other open deviation of the product with as much to decide is included: nobody decides it twice. */
function spokenFor(deviation: Deviation, product: ProductConcerned, weight: EnteredMass, most: Weight): Named[] {
  const isAll = weight.value === most.value && weight.unit === most.unit;
  const mass = isAll ? massFromGrams(most.grams.toFixed(9)) : massOf(weight);
  return [deviation, ...product.alsoOpen.filter(({ undecided }) => massFromGrams(undecided.grams.toFixed(9)) >= mass)];
}
