import { HostTrouble } from './host-trouble.tsx';
import { LibraryTrouble } from './library-trouble.tsx';
import { SaveProblem } from './save-problem.tsx';

/** Everything that stands in the way of work, the gravest first, for as long as it holds. */
export const Troubles = () => <><HostTrouble /><LibraryTrouble /><SaveProblem /></>;
