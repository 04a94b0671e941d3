import type { ReactNode } from 'react';
import styles from './glyphs.module.css';

/** The few signs of the bench, drawn on a 20 by 20 field in the colour of the text. They never stand for a word alone: the control is named. */
const Glyph = ({ children }: { children: ReactNode }) => (
  <svg className={styles.glyph} viewBox="0 0 20 20" aria-hidden="true" focusable="false">{children}</svg>
);

export const UndoGlyph = () => <Glyph><path d="M7 4 3 8l4 4M3.5 8H12a4.5 4.5 0 0 1 0 9H8" /></Glyph>;
export const RedoGlyph = () => <Glyph><path d="m13 4 4 4-4 4M16.5 8H8a4.5 4.5 0 0 0 0 9h4" /></Glyph>;
export const CloseGlyph = () => <Glyph><path d="m4.5 4.5 11 11m0-11-11 11" /></Glyph>;
export const AddGlyph = () => <Glyph><path d="M10 3.5v13M3.5 10h13" /></Glyph>;
export const LessGlyph = () => <Glyph><path d="M3.5 10h13" /></Glyph>;
export const BackGlyph = () => <Glyph><path d="m11.5 4-6 6 6 6M6 10h11" /></Glyph>;
export const UnfoldGlyph = () => <Glyph><path d="m5 8 5 5 5-5" /></Glyph>;
export const TickGlyph = () => <Glyph><path d="m4 10.5 4 4 8-9" /></Glyph>;
export const GearGlyph = () => <Glyph><path d="M3 6h8m4 0h2M3 14h2m4 0h8M11 3.8v4.4M7 11.8v4.4" /></Glyph>;
export const ErrandsGlyph = () => <Glyph><path d="M3 5h9M3 10h6M3 15h5M11.5 13.5l2.5 2.5 4-5" /></Glyph>;
export const KeysGlyph = () => <Glyph><path d="M2.5 5h15v10h-15zM6 8.4h.01M10 8.4h.01M14 8.4h.01M6.5 11.8h7" /></Glyph>;
