import { lazy, Suspense } from 'react';
import { CasebookPage } from './page/casebook-page.tsx';
import { parseRoute, usePath } from './state/route.ts';

// the list of cases is the first page: what it does not need comes when a case is opened
const CasePage = lazy(async () => ({ default: (await import('./page/case-page.tsx')).CasePage }));
const BenchPage = lazy(async () => ({ default: (await import('./page/bench-page.tsx')).BenchPage }));
const CapturePage = lazy(async () => ({ default: (await import('./page/capture-page.tsx')).CapturePage }));

export function App() {
  const route = parseRoute(usePath());
  return (
    <Suspense fallback={<main className="alone" aria-busy="true" />}>
      {route.page === 'casebook' && <CasebookPage />}
      {route.page === 'case' && <CasePage key={route.id} id={route.id} chapter={route.chapter} />}
      {route.page === 'capture' && <CapturePage key={route.id} id={route.id} />}
      {route.page === 'bench' && <BenchPage key={route.id} id={route.id} />}
    </Suspense>
  );
}
