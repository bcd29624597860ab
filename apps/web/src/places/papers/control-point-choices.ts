import type { listControlPoints, ReplyOf } from '@larderbook/contracts';
import type { SayOf } from '@larderbook/messages';

type Listed = ReplyOf<typeof listControlPoints>['controlPoints'];

/** Points that would read alike also name their plan. */
export function controlPointChoices(listed: Listed, say: SayOf<'papers'>): { value: string; name: string }[] {
  const alike = (one: Listed[number]) =>
    listed.filter(({ productName, name }) => productName === one.productName && name === one.name).length > 1;
  return listed.map((one) => {
    const { controlPointId: value, productName: product, name: point, planTitle: plan } = one;
    return { value, name: alike(one) ? say('point-of-plan', { product, point, plan }) : say('point-of-product', { product, point }) };
  });
}
