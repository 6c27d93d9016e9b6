import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './fonts';
import '../ui/tokens.css';
import '../ui/base.css';
import '../ui/controls.css';
import { followTheme } from '../ui/sheet-theme';
import { App } from './app';

followTheme();
const place = document.getElementById('root');
if (place)
  createRoot(place).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );

if (import.meta.env.PROD && 'serviceWorker' in navigator)
  void import('./keep-offline').then(({ keepOffline }) => keepOffline());
