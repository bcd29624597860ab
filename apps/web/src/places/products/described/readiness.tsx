import { Status } from '../../../ui/status';
import { whatIsMissing, type ProductHead } from './product-words';
import { useSay } from '../../../ui/voice';

type ReadinessProps = { product: Pick<ProductHead, 'formulaVersion' | 'planInForce'>; note?: string };

export function Readiness({ product, note }: ReadinessProps) {
  const say = useSay('products');
  const missing = whatIsMissing(product);
  if (missing) return <Status state="undetermined" word={say(missing)} margin={note} />;
  return <Status state="met" word={say('ready')} />;
}
