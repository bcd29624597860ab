import type { welcome as english } from '../en/welcome';
import { translated } from '../translated';

export const welcome = translated<typeof english>()({
  'what-it-is':
    'El libro de registros de un pequeño productor: cada lote desde la carne recibida hasta los paquetes enviados, evaluado mientras se hace, y en papel cuando se pide.',
  'is-set-up': 'Su negocio está configurado',
  'sign-in-with': 'Inicie sesión con el nombre de usuario y la contraseña que le dieron.',
  'sign-in': 'Iniciar sesión',
  'set-up': 'Configurar mi negocio',
  'three-pages': 'Tres páginas cortas: el negocio, su reloj y sus unidades, y usted como propietario. Todo se puede cambiar después.',
  'look-round': 'Ver una demostración',
  'invented-shop':
    'Un negocio inventado con dos meses de entregas, lotes, incumplimientos y envíos. Nada de lo que haga allí es un registro suyo.',
  'open-demonstration': 'Abrir la demostración',
  'never-mixes': 'Los dos pueden estar abiertos al mismo tiempo; la demostración nunca se mezcla con sus propios registros.',
  'setting-up': 'Configuración',
  'step-shop': 'Su negocio',
  'step-habits': 'Reloj y unidades',
  'step-owner': 'Usted',
  'step-look-over': 'Repaso',
  'open-book': 'Abrir el libro',
  'opening-book': 'Abriendo su libro…',
  'change-under': 'Cambiarlo en “{step}”',
  'not-right-yet': 'Algo todavía no está bien.',
  'shop-question': '¿Cómo se llama su negocio?',
  'shop-hint': 'Como aparece en sus etiquetas. Se imprime al principio de cada registro.',
  'habits-question': '¿Con qué reloj y en qué unidades trabaja?',
  'habits-hint':
    'Deducido de este dispositivo. De todos modos se puede usar cualquier termómetro y báscula: un valor se guarda en la unidad en que se leyó.',
  'owner-question': '¿Quién es usted?',
  'owner-hint':
    'Usted es el propietario: crea cuentas para los demás y escribe productos y planes. Su nombre queda debajo de lo que anota y firma.',
  'right-question': '¿Está bien así?',
  'right-hint': 'Los datos del negocio se pueden cambiar después; lo anotado antes conserva los datos con que se anotó.',
  owner: 'Propietario',
  'computes-only':
    'Larderbook guarda registros y calcula; no valida un proceso. Los límites que ofrece son referencias: su plan debe validarse, y deciden las normas locales, su inspector y una autoridad de procesos con licencia. Las sales de cura son tóxicas en exceso.',
  demonstration: 'Negocio de demostración',
  'invented-people':
    'Personas inventadas en un negocio inventado. Entre como cualquiera de ellas y pruebe lo que quiera: nada de eso es un registro suyo.',
  'sign-in-as': 'Entrar como',
  'role-does': '{role}. {does}',
  'signing-in': 'Iniciando sesión…',
  'look-at': 'Qué mirar',
  'by-hand': 'Nombres de usuario y contraseña, para iniciar sesión a mano',
  'user-with-password': '{userName} con {password}',
  making: 'El negocio de demostración está viviendo sus dos meses.',
  'making-how': 'Cada entrega, lote, lectura y envío se manda de la misma manera que los suyos, y se evalúa.',
  'entries-of-demonstration': 'Entradas de la demostración',
  'entries-done': '{done} de {all} entradas. Solo la primera vez.',
  'first-come': 'Primero vienen sus proveedores, productos y planes.',
});
