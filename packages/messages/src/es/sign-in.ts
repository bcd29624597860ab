import type { signIn as english } from '../en/sign-in';
import { translated } from '../translated';

export const signIn = translated<typeof english>()({
  title: 'Iniciar sesión',
  'user-name': 'Nombre de usuario',
  password: 'Contraseña',
  'user-name-missing': 'Escriba su nombre de usuario.',
  'password-missing': 'Escriba su contraseña.',
  'sign-in': 'Iniciar sesión',
  'signing-in': 'Iniciando sesión…',
  forgotten: '¿La olvidó? Un propietario del negocio puede darle una contraseña nueva en Negocio, Personas.',
  'your-own-shop': 'Su propio negocio',
  'not-set-up': 'Todavía no está configurado.',
  'set-up': 'Configurar mi negocio',
  demonstration: 'Negocio de demostración',
  'open-demonstration': 'Entrar al negocio de demostración',
});
