import { readFileSync } from 'node:fs';
import { render, screen } from '@testing-library/react';
import { beforeEach, describe, expect, it } from 'vitest';
import { Gallery } from '../../../../renderer/gallery/gallery.tsx';
import { FACET_NAMES, OVERALL, TIP_FACETS } from '../../../../shared/vocabulary/tip.ts';
import { VERDICTS } from '../../../../shared/vocabulary/verdicts.ts';
import { freshPage } from '../support/page.ts';

describe('the gallery', () => {
  beforeEach(() => { freshPage(); });

  it('shows every value of every facet, and every verdict', { timeout: 120_000 }, () => {
    render(<Gallery />);
    const captions = [...document.querySelectorAll('figcaption')].map((caption) => caption.textContent);
    expect(captions).toEqual([...FACET_NAMES.flatMap((facet) => [...TIP_FACETS[facet]]), ...OVERALL]);
    for (const verdict of VERDICTS) expect(screen.getAllByText(verdict).length).toBeGreaterThan(0);
  });

  it('is not reached from the page that ships', () => {
    expect(readFileSync('renderer/index.html', 'utf8')).not.toContain('gallery');
    expect(readFileSync('renderer/vite.config.ts', 'utf8')).not.toContain('gallery');
  });
});
