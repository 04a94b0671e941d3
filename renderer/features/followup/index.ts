export { SincePanel } from './since-panel.tsx';
export { Timeline } from './timeline.tsx';
export { WhatBecame } from './what-became.tsx';
