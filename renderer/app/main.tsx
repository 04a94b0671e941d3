import './no-eval.ts';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import '../ui/fonts.css';
import '../ui/tokens.css';
import '../ui/base.css';
import '../ui/print.css';
import { App } from './app.tsx';

const page = document.getElementById('page');
if (page === null) throw new Error('the page has no place to draw in');
createRoot(page).render(<StrictMode><App /></StrictMode>);
