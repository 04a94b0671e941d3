import { useEffect } from 'react';
import { useStore } from '../state/store.ts';

const DARK = '(prefers-color-scheme: dark)';

/** Puts the theme and the size of text on the document; 'system' follows the computer as it changes. */
export function useAppearance(): void {
  const theme = useStore((state) => state.settings.theme);
  const textSize = useStore((state) => state.settings.textSize);
  useEffect(() => {
    const dark = window.matchMedia(DARK);
    const apply = (): void => {
      document.documentElement.dataset.theme = theme === 'system' ? (dark.matches ? 'dark' : 'light') : theme;
    };
    apply();
    dark.addEventListener('change', apply);
    return () => dark.removeEventListener('change', apply);
  }, [theme]);
  useEffect(() => { document.documentElement.dataset.textSize = textSize; }, [textSize]);
}
