export { entryHref, lineHref } from './addresses.ts';
export { KnowledgeScreen } from './knowledge-screen.tsx';
