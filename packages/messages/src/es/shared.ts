import type { shared as english } from '../en/shared';
import { translated } from '../translated';

export const shared = translated<typeof english>()({
  save: 'Guardar',
  cancel: 'Cancelar',
  correct: 'Corregir',
  void: 'Anular',
  print: 'Imprimir',
  close: 'Cerrar',
  back: 'Atrás',
  next: 'Siguiente',
  done: 'Listo',
  remove: 'Quitar',
  show: 'Mostrar',
  hide: 'Ocultar',
  'show-what-is-written': 'Mostrar lo escrito',
  'hide-what-is-written': 'Ocultar lo escrito',
  'try-again': 'Intentar de nuevo',
  'no-connection': 'No hay conexión con el libro de registros.',
  'kept-until-connected': 'Lo que anote queda guardado en este dispositivo y se envía cuando vuelva la conexión.',
  'page-failed': 'Algo falló en esta página.',
  'still-kept': 'Lo guardado en este dispositivo sigue ahí. Intente de nuevo; si continúa, vuelva a cargar la página.',
});
