import type { humidityKept as english } from '../en/humidity-kept';
import { translated } from '../translated';

export const humidityKept = translated<typeof english>()({
  'kept-live-steam': 'vapor directo, {time} en total',
  'kept-sealed-oven': 'horno sellado, {time} en total',
  'kept-humid-for-a-quarter': 'humedad relativa de por lo menos {percent} durante {time}',
  'kept-humid-throughout': 'humedad relativa de por lo menos {percent} durante {time}',
  'kept-large-piece-in-a-hot-oven': 'una pieza de {piece}, el horno por lo menos a {oven}',
  'kept-moisture-proof-bag': 'bolsa sellada a prueba de humedad',
});
