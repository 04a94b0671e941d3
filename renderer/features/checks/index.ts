export { CylindersStation } from './cylinders-station.tsx';
