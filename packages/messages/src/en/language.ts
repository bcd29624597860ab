/** In which language somebody is spoken to, on screen and on paper. */
export const language = {
  language: 'Language',
  'for-you': 'Your language',
  'on-every-device': 'On every device you sign in on, and on what you print.',
  'as-the-device': 'As the device is set',
} as const;
