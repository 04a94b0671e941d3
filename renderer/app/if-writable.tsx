import type { ReactNode } from 'react';
import { useReadOnly } from '../state/hooks.ts';

/** Controls that change the library; nothing where it can only be read, so that no control stands there dead. */
export const IfWritable = ({ children }: { children: ReactNode }) => (useReadOnly() ? null : children);
