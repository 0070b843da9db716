import { describe, expect, it } from 'vitest';
import { contentPolicy, withContentPolicy } from '../../../docs-site/plugins/content-policy/policy.js';

// printf 'hi()' | openssl dgst -sha256 -binary | base64
const hash = 'XJ2NWmzN6ujI1rM9ekfSbLHcLivIQQULuiC/AeTcyy0=';

describe('the content security policy of a page', () => {
  it('names the inline scripts that run, and no data', () => {
    const policy = contentPolicy(
      '<script src="/a.js"></script><script>hi()</script><script type="application/ld+json">{"a":1}</script><script>hi()</script>',
    );
    expect(policy).toContain(`script-src 'self' 'sha256-${hash}';`);
    expect(policy.match(/sha256-/g)).toHaveLength(1);
    expect(policy).not.toMatch(/script-src[^;]*unsafe/);
  });

  it('stands before everything else in the head', () => {
    const page = withContentPolicy('<!doctype html><html><head data-x="1"><script>hi()</script></head><body></body></html>');
    expect(page).toMatch(/<head data-x="1"><meta http-equiv="Content-Security-Policy" content="[^"]+"><script>/);
  });
});
