import { after, applied, diagonal, type Matrix, type Triple } from './matrix.ts';

/** Bradford cone response and its inverse (Lam, "Metamerism and Colour Constancy", thesis, University of Bradford 1985; ICC.1 annex E). */
const TO_CONES: Matrix = [[0.8951, 0.2664, -0.1614], [-0.7502, 1.7135, 0.0367], [0.0389, -0.0685, 1.0296]];
const FROM_CONES: Matrix = [
  [0.9869929054667123, -0.14705425642099013, 0.15996265166373125],
  [0.43230526972339456, 0.5183602715367776, 0.0492912282128556],
  [-0.008528664575177328, 0.04004282165408487, 0.9684866957875502],
];

/** The matrix on XYZ that makes what looked like `from` look like `to` and keeps other surfaces the same surfaces (linear Bradford). */
export function adaptation(from: Triple, to: Triple): Matrix {
  const [source, target] = [applied(TO_CONES, from), applied(TO_CONES, to)];
  return after(FROM_CONES, after(diagonal([target[0] / source[0], target[1] / source[1], target[2] / source[2]]), TO_CONES));
}
