/** Usual drives as legs, a line each: seconds, speed in r/min, load in per cent, lambda. Grade: guesses, after the pattern of cold-start tests. */
export const DRIVES = {
  'short trips in frost': '10, 1200, 45, 0.6\n40, 2000, 50, 0.72\n90, 1100, 38, 0.7\n40, 2000, 50, 0.78\n20, 1500, 50, 0.72\n30, 1100, 38, 0.7',
  commute: '30, 1200, 40, 0.75\n180, 1800, 45, 0.9\n60, 900, 35, 0.95\n400, 2200, 50, 1\n60, 900, 35, 0.95\n300, 2500, 55, 1',
  'long road': '30, 1200, 40, 0.75\n240, 2000, 50, 0.95\n1200, 3000, 65, 1\n120, 3500, 100, 0.9\n600, 3000, 65, 1',
} as const;
export type DriveName = keyof typeof DRIVES;
export const DRIVE_NAMES = Object.keys(DRIVES) as readonly DriveName[];
