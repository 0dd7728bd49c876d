/** Draws the page that the address asks for. */
import { Component, lazy, type ReactNode, StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import { z } from 'zod';
import { DropAnywhere } from './jobs/drop-anywhere.tsx';
import { PageMasthead } from './jobs/page-masthead.tsx';
import { wear } from './look/theme.ts';
import { beginEarly } from './state/idle-workers.ts';
import { preferences, readerOf } from './state/preferences.ts';
import { type Route, useRoute } from './state/route.ts';
import { ReaderContext, useWords } from './words/use-words.ts';
import './look/fonts.ts';
import './look/look.css';

// The page's policy forbids code made from text, which the checker of schemas would otherwise use to be faster.
z.config({ jitless: true });

const sheetPage = () => import('./sheet/sheet-page.tsx');
const SheetPage = lazy(sheetPage);
const jobsPage = () => import('./jobs/jobs-page.tsx');
const JobsPage = lazy(jobsPage);
const shopPage = () => import('./shop/shop-page.tsx');
const ShopPage = lazy(() => shopPage().then((m) => ({ default: m.ShopPage })));
const machinePage = () => import('./sheet/machine-page.tsx');
const MachinePage = lazy(machinePage);

/** ms after the start: whatever page is first is not to wait for the others. */
const LATER = 3000;
// A page that was never fetched could not be drawn while the server is gone, and could not even say so.
setTimeout(() => void Promise.allSettled([sheetPage(), jobsPage(), shopPage(), machinePage()]), LATER);

const Page = (): ReactNode => {
  const words = useWords().page;
  const route = useRoute();
  return (
    <DropAnywhere>
      <Suspense fallback={<p className="unseen">{words.loading}</p>}>
        <PageOf route={route} />
      </Suspense>
    </DropAnywhere>
  );
};

const PageOf = ({ route }: { readonly route: Route }): ReactNode => {
  const words = useWords().page;
  if (route.kind === 'job') return <SheetPage key={route.id} id={route.id} />;
  if (route.kind === 'run') return <MachinePage key={route.id} id={route.id} />;
  if (route.kind === 'shop')
    return (
      <>
        <PageMasthead />
        <ShopPage />
      </>
    );
  if (route.kind === 'jobs') return <JobsPage first={route.first} />;
  return (
    <main className="plain-page" id="content">
      <h1>{words.notFound}</h1>
      <p>
        {words.notFoundHelp} <a href="/jobs">{words.jobs}</a>
      </p>
    </main>
  );
};

/** A fault of ours must not leave an empty page. */
class Guard extends Component<{ readonly children: ReactNode }, { readonly broken: boolean }> {
  override state = { broken: false };
  static getDerivedStateFromError(): { readonly broken: boolean } {
    return { broken: true };
  }
  override render(): ReactNode {
    if (!this.state.broken) return this.props.children;
    return <Broken />;
  }
}

const Broken = (): ReactNode => {
  const words = useWords().page;
  return (
    <main className="plain-page" id="content">
      <h1>{words.broken}</h1>
      <p role="alert">{words.brokenHelp}</p>
      <button type="button" onClick={() => location.reload()}>
        {words.reload}
      </button>
    </main>
  );
};

// These pages will run a job: the worker loads while they do.
if (/^\/($|job\/|run\/)/.test(location.pathname)) beginEarly();
// The first visit goes on to the example: its page is fetched while the list of jobs is asked for.
if (location.pathname === '/') void sheetPage();
wear(preferences().theme);
const reader = readerOf(preferences());
document.documentElement.lang = reader.language?.code ?? 'en';
const place = document.getElementById('sheet');
if (place !== null)
  createRoot(place).render(
    <StrictMode>
      <ReaderContext value={reader}>
        <Guard>
          <Page />
        </Guard>
      </ReaderContext>
    </StrictMode>,
  );
