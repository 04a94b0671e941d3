import { createRoot } from 'react-dom/client';
import '../ui/fonts.css';
import '../ui/tokens.css';
import '../ui/base.css';
import { Gallery } from './gallery.tsx';

const page = document.getElementById('page');
if (page === null) throw new Error('the gallery has no place to draw in');
createRoot(page).render(<Gallery />);
