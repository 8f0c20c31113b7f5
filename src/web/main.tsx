import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { adoptFigureStyle } from './style/adopt.ts';
import './style/tokens.css';
import './style/page.css';
import './style/verdict.css';
import './style/entry.css';
import './style/stack.css';
import './style/casebook.css';
import './style/bench.css';
import './style/circuit.css';
import './style/picture.css';
import './style/run.css';

const page = document.getElementById('page');
if (page === null) throw new Error('the page has no place for the workspace');
adoptFigureStyle();
createRoot(page).render(<App />);
