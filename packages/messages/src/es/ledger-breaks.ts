import type { ledgerBreaks as english } from '../en/ledger-breaks';
import { translated } from '../translated';

export const ledgerBreaks = translated<typeof english>()({
  'entry-out-of-place': 'La línea {seq} está donde corresponde la línea {expected}.',
  'entry-missing': 'Falta la línea {seq}.',
  'entries-missing': 'Faltan las líneas {first} a {last}.',
  'previous-hash-altered': 'Se alteró la huella anterior en la línea {seq}.',
  'entry-exchanged': 'La línea {seq} no sigue a la anterior: una se cambió.',
  'hash-altered': 'Se alteró la huella de la línea {seq}; su contenido está como se escribió.',
  'content-altered': 'El contenido de la línea {seq} no da su huella: se alteró.',
  'hash-not-as-printed': 'La huella de la línea {seq} no es la impresa en papel.',
  'ends-before-paper': 'La cadena termina en la línea {last}, pero el papel muestra la línea {latest}.',
  'records-list-altered': 'Lo que la línea {seq} dice que se agregó no da su huella: se alteró.',
  'record-gone': 'Ya no está el registro {id} ({table}) que asentó la línea {seq}.',
  'record-altered': 'El registro {id} ({table}) se alteró después de que lo asentó la línea {seq}.',
  'ends-before-acknowledged': 'La cadena termina en la línea {last}, pero se confirmaron escrituras hasta la línea {latest}.',
  'sign-in-altered': 'Los datos de acceso de {person} se cambiaron después de que los asentó la línea {seq}.',
  'sign-in-beside': '{person} puede iniciar sesión, y ninguna línea lo dice.',
  'record-beside': 'El registro {id} ({table}) se puso después de la línea {seq}, y ninguna línea lo cubre.',
});
