export { KnowledgeScreen } from './knowledge-screen.tsx';
