import type { AppError } from '../../../shared/channels.ts';
import type { Station } from '../../app/route.ts';

const stations: Record<Station, string> = { run: 'The run', plugs: 'The plugs', cylinders: 'The cylinders', findings: 'Findings' };

export const shell = {
  name: 'Corenose',
  skip: 'Skip to the bench',
  stations,
  close: 'Close',
  undo: 'Undo',
  redo: 'Redo',
  quantity: {
    allowed: (low: string, high: string, unit: string): string => `Give ${low} to ${high} ${unit}`.trim() + '.',
    problem: (what: 'unreadable' | 'two meanings' | 'out of range', allowed: string): string => {
      switch (what) {
        case 'unreadable': return `This is not a number that can be taken here. ${allowed}`;
        case 'two meanings': return `This can be read in two ways; write it without the comma, or with a point. ${allowed}`;
        case 'out of range': return `Out of range. ${allowed}`;
      }
    },
  },
  error: (error: AppError): string => {
    switch (error.code) {
      case 'forbidden': return 'The program refused the request. Start it again and use the window it opens.';
      case 'bad-request': return error.problems.map(({ path, message }) => (path === '' ? message : `${path}: ${message}`)).join('\n');
      case 'not-found': return `Not found: ${error.what}.`;
      default: return error.message;
    }
  },
};
