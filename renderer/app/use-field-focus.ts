import { useEffect } from 'react';
import { useRoute } from './use-route.ts';

const CAN_TYPE = 'input:not(:disabled), select:not(:disabled), textarea:not(:disabled), button:not(:disabled)';

/**
 * Goes to the field that the address names, in the element that carries it as `data-field`, and gives back the name.
 * A new screen takes the focus first, so this waits its turn.
 */
export function useFieldFocus(place: (field: string) => string = String): string | undefined {
  const route = useRoute();
  const field = route.page === 'reading' ? route.field : undefined;
  const name = field === undefined ? undefined : place(field);
  useEffect(() => {
    if (name === undefined) return;
    const timer = setTimeout(() => {
      const element = [...document.querySelectorAll<HTMLElement>('[data-field]')].find(({ dataset }) => dataset.field === name);
      element?.scrollIntoView({ block: 'center' });
      element?.querySelector<HTMLElement>(CAN_TYPE)?.focus({ preventScroll: true });
    });
    return () => clearTimeout(timer);
  }, [name]);
  return field;
}
