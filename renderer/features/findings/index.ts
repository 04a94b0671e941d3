export { FindingsStation } from './findings-station.tsx';
