import type { beforeWeighing as english } from '../../en/verdicts/before-weighing';
import { translated } from '../../translated';

export const beforeWeighing = translated<typeof english>()({
  'take-less-binder': 'Ponga menos antes de mezclar.',
  'replace-less': 'Reemplace menos del acelerador.',
  'aim-at-less': 'Apunte a menos o inyecte menos, antes de preparar la salmuera.',
  'weigh-more': 'Pese más, o use otra fuente.',
  'weigh-less': 'Pese menos.',
  'less-phosphate': 'Ponga menos fosfato o inyecte menos, antes de preparar la salmuera.',
  'less-water': 'Ponga menos agua o séquelo más, y analice de nuevo antes de etiquetarlo así.',
});
