/** The page before the book: signing in. */
export const signIn = {
  title: 'Sign in',
  'user-name': 'User name',
  password: 'Password',
  'user-name-missing': 'Write your user name.',
  'password-missing': 'Write your password.',
  'sign-in': 'Sign in',
  'signing-in': 'Signing in…',
  forgotten: 'Forgotten? An owner of the shop can give you a new password under Shop, People.',
  'your-own-shop': 'Your own shop',
  'not-set-up': 'It is not set up yet.',
  'set-up': 'Set up my shop',
  demonstration: 'Demonstration shop',
  'open-demonstration': 'Sign in to the demonstration shop',
} as const;
