import type { Drawing } from './drawing.ts';
import type { Shape } from './shape.ts';

/** Attributes that SVG itself writes in camel case. */
const AS_IT_IS = new Set(['viewBox', 'gradientUnits']);
const svgName = (name: string): string => (AS_IT_IS.has(name) ? name : name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`));

const markupOf = ({ tag, attrs, children = [] }: Shape): string => {
  const written = Object.entries(attrs).map(([name, value]) => ` ${svgName(name)}="${value}"`).join('');
  return children.length === 0 ? `<${tag}${written}/>` : `<${tag}${written}>${children.map(markupOf).join('')}</${tag}>`;
};

/** The drawing as the text of an SVG file. */
export function svgText({ window, shapes }: Drawing, size: number): string {
  const height = Math.round((size * window[3]) / window[2]);
  const attrs = { xmlns: 'http://www.w3.org/2000/svg', viewBox: window.join(' '), width: size, height };
  return markupOf({ tag: 'svg', attrs, children: shapes });
}
