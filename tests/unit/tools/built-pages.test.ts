import { describe, expect, it } from 'vitest';
import { hasDrawnNumber, safetyFailuresIn, silentFailuresIn } from '../../../tools/checks/built-pages.mjs';

describe('silentFailuresIn', () => {
  it.each([
    ['<span class="katex-error" title="…">x</span>', 'broken maths: katex-error'],
    ['<mstyle mathcolor="#cc0000">', 'broken maths: #cc0000'],
    ['<script src="https://a.example/b.js">', 'loads from another host'],
    ['<script defer src=//a.example/b.js>', 'loads from another host'],
    ["<img alt='' src='http://a.example/b.png'>", 'loads from another host'],
    ['<link rel="preconnect" href="https://a.example">', 'links a resource of another host'],
    ['<link href=https://a.example/x.css rel=stylesheet>', 'links a resource of another host'],
    ['<style>a{background:url(https://a.example/x.png)}</style>', 'loads from another host'],
  ])('finds the fault in %s', (html, what) => {
    expect(silentFailuresIn(html, '.html')).toEqual([expect.stringContaining(what)]);
  });

  it.each([
    '<a href="https://a.example/paper.pdf">paper</a>',
    '<link rel="canonical" href="https://a.example/page">',
    '<meta property="og:image" content="https://a.example/card.png">',
    '<script src="/assets/js/main.js"></script>',
    '<link rel="stylesheet" href="/assets/css/styles.css">',
  ])('leaves %s alone', (html) => {
    expect(silentFailuresIn(html, '.html')).toEqual([]);
  });

  it('finds an import of another host in a style sheet', () => {
    expect(silentFailuresIn('@import "https://a.example/font.css";', '.css')).toHaveLength(1);
  });
});

describe('safetyFailuresIn', () => {
  const page = '<head><meta http-equiv="Content-Security-Policy" content="default-src \'self\'"></head>';

  it('finds a page without a policy, and the path of the builder in any file', () => {
    expect(safetyFailuresIn(page, '.html', '/home/someone/wallflow')).toEqual([]);
    expect(safetyFailuresIn('<head></head>', '.html', '/home/someone/wallflow')).toEqual(['no content security policy']);
    expect(safetyFailuresIn('e("/home/someone/wallflow/docs-site/x.json")', '.js', '/home/someone/wallflow')).toHaveLength(1);
  });
});

describe('hasDrawnNumber', () => {
  it('finds a script whose number may be another in another folder', () => {
    expect(hasDrawnNumber('assets/js/2164.41f48855.js')).toBe(true);
    expect(hasDrawnNumber('assets/js/17896441.d1633c1e.js')).toBe(false);
    expect(hasDrawnNumber('assets/js/packages_exhaust_src_gas_density_definition_ts.0a1b2c3d.js')).toBe(false);
  });
});
