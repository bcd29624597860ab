import '../ui/theme.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startSending } from '../outbox/outbox';
import { keepAnswers } from './kept-answers';
import { fetchPagesAhead } from './pages-ahead';
import { queries } from './queries';
import { router } from './router';

const app = document.getElementById('app');
if (!app) throw new Error('index.html has no #app');

await keepAnswers(queries);
createRoot(app).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </StrictMode>,
);
startSending();
fetchPagesAhead(router);
