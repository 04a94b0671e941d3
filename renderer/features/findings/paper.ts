import { createContext, useContext } from 'react';

/** Whether the findings are laid out for paper. */
export const PaperContext = createContext(false);

export const useOnPaper = (): boolean => useContext(PaperContext);
