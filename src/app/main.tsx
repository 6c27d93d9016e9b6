import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';

const place = document.getElementById('root');
if (place)
  createRoot(place).render(
    <StrictMode>
      <h1>Elbowroom</h1>
    </StrictMode>,
  );
