import type katex from 'katex';
import { styledTex } from './formula-key.js';

export type Render = (tex: string, display: boolean) => string | undefined;

type Katex = typeof katex;

/** The renderer as a file of its own beside its style sheet, so that a page can keep it on the device without running it. */
export const rendererFile = 'formulas/katex.js';

function rendering(renderer: Katex): Render {
  return (tex, display) => renderer.renderToString(styledTex(tex, display), { throwOnError: false });
}

/**
 * Where the pages are built, formulas are set at once. In a browser the branch is not there, and with it neither is the
 * renderer: what was set stays in the page, and is not sent a second time as data.
 */
export function renderWhileBuilding(): Render | undefined {
  // Asked for in this very form: the bundler of the client then leaves the branch out with all that it needs.
  if (process.env.WALLFLOW_BUILDS_PAGES === 'true') {
    const module = require('katex') as Katex & { readonly default?: Katex };
    return rendering(module.default ?? module);
  }
  return undefined;
}

let loading: Promise<Render> | undefined;

/** Load the renderer into the page, once; one that could not be loaded is tried anew at the next wish. */
export function loadRenderer(baseUrl: string): Promise<Render> {
  loading ??= new Promise<Render>((resolve, reject) => {
    const script = document.createElement('script');
    script.src = `${baseUrl}${rendererFile}`;
    script.onload = () => resolve(rendering((window as unknown as { readonly katex: Katex }).katex));
    script.onerror = () => reject(new Error('the formulas could not be loaded'));
    document.head.append(script);
  }).catch((error: unknown) => {
    loading = undefined;
    throw error;
  });
  return loading;
}
