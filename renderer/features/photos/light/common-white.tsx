import { adaptation } from '../../../../core/photo/bradford.ts';
import { D65 } from '../../../../core/photo/lab.ts';
import { after, scaled, type Matrix } from '../../../../core/photo/matrix.ts';
import { RGB_TO_XYZ, xyzFromLinear, XYZ_TO_RGB } from '../../../../core/photo/srgb.ts';
import type { PhotoRecord } from '../../../../shared/channels-photo.ts';
import styles from './light.module.css';

/** From linear sRGB of the picture to linear sRGB on the corrected white; undefined where no white is known. */
export function toCommonWhite({ measure }: Pick<PhotoRecord, 'measure'>): Matrix | undefined {
  const reference = measure?.whiteReference;
  if (reference === undefined || reference.kind === 'none') return undefined;
  const [red = 0, green = 0, blue = 0] = reference.white;
  const [x, y, z] = xyzFromLinear([red, green, blue]);
  if (!(y > 0)) return undefined;
  return scaled(after(XYZ_TO_RGB, after(adaptation([x / y, 1, z / y], D65), RGB_TO_XYZ)), 1 / y);
}

const filterId = (id: string): string => `white-${id}`;

/** The CSS filter that shows a photo on the common white, defined by `WhiteFilter`. */
export const whiteFilter = (photo: PhotoRecord): string | undefined => (toCommonWhite(photo) === undefined ? undefined : `url(#${filterId(photo.id)})`);

/** Works in linear light, as adaptation must. */
export function WhiteFilters({ photos }: { photos: readonly PhotoRecord[] }) {
  return (
    <svg className={styles.filters} aria-hidden="true">
      {photos.map((photo) => {
        const matrix = toCommonWhite(photo);
        if (matrix === undefined) return null;
        return (
          <filter key={photo.id} id={filterId(photo.id)} colorInterpolationFilters="linearRGB" x="0" y="0" width="1" height="1">
            <feColorMatrix type="matrix" values={`${matrix.map((row) => `${row.join(' ')} 0 0`).join(' ')} 0 0 0 1 0`} />
          </filter>
        );
      })}
    </svg>
  );
}
