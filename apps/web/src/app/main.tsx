import '../ui/theme.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { languageHere } from '../api/language';
import { startSending } from '../outbox/outbox';
import { wordsOnce } from '../ui/voice';
import { keepAnswers } from './kept-answers';
import { fetchPagesAhead } from './pages-ahead';
import { queries } from './queries';
import { router } from './router';

const app = document.getElementById('app');
if (!app) throw new Error('index.html has no #app');

await Promise.all([keepAnswers(queries), wordsOnce('shared', languageHere()), wordsOnce('shell', languageHere())]);
createRoot(app).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </StrictMode>,
);
startSending();
void wordsOnce('faults', languageHere()); // a field says at once what is wrong with it
fetchPagesAhead(router);
