export { DrawnTip, TipSample, type Sample } from './drawn-tip.tsx';
export { describeTip } from './describe.ts';
export { TIP_PARTS, type Question, type TipPart } from './parts.ts';
export { drawTip, type Drawing, type View } from './drawing.ts';
export { svgText } from './markup.ts';
