import '@fontsource-variable/literata/opsz.css';
import '@fontsource-variable/source-sans-3';
import './look/tokens.css';
import './look/base.css';
import './parts/fold.css';
import './look/print.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { hearKeys } from './actions.ts';
import { queryClient } from './api.ts';
import { App } from './app.tsx';
import { applyTheme } from './look/theme.ts';
import { entryPrefix } from './places/line/outbox.ts';

applyTheme();
hearKeys();

// What was typed at the line and not acknowledged is sent whichever page is opened next.
try {
  if (Object.keys(localStorage).some((key) => key.startsWith(entryPrefix)))
    void import('./places/line/outbox-driver.ts');
} catch {
  // A device that stores nothing has nothing waiting.
}

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no place for the app');
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={queryClient}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
