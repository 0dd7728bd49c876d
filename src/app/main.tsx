/** Draws the page that the address asks for. */
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';

const Page = () => <main>Kerfwright</main>;

const place = document.getElementById('sheet');
if (place !== null)
  createRoot(place).render(
    <StrictMode>
      <Page />
    </StrictMode>,
  );
