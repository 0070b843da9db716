import type { Block, Sheet, Tone } from './blocks.js';
import { escapeHtml } from './escape-html.js';
import { plotSvg } from './plot.js';

const toneWords: Readonly<Record<Tone, string>> = { good: 'good', bad: 'attention', open: 'open' };

const style = `
:root{color-scheme:light dark;--ink:#16211f;--paper:#fbfaf6;--rule:#c9c5b6;--soft:#eeebe0;--good:#1c6b45;--bad:#a1301c;--open:#6b5310;--clean:#3d5a80}
@media (prefers-color-scheme:dark){:root{--ink:#ece9df;--paper:#171b1a;--rule:#4a504d;--soft:#232927;--good:#7fd6a8;--bad:#ff9d85;--open:#e9c766;--clean:#9dc0ea}}
*{box-sizing:border-box}body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 system-ui,sans-serif}
main{max-width:60rem;margin:0 auto;padding:1.25rem}h1{font-size:1.6rem;line-height:1.2;margin:.2em 0 .6em}h2{font-size:1.1rem;margin:1.6em 0 .4em;border-bottom:1px solid var(--rule);padding-bottom:.2em}
.verdicts{list-style:none;margin:0 0 1.2rem;padding:0;display:grid;gap:.5rem}.verdicts li{background:var(--soft);border-left:.5rem solid var(--open);padding:.5rem .8rem}
.verdicts li.good{border-color:var(--good)}.verdicts li.bad{border-color:var(--bad)}.verdicts b{display:block;font-weight:600;font-size:.85rem}.verdicts i{font-style:normal;font-size:.85rem;float:right}
dl{display:grid;grid-template-columns:minmax(8rem,auto) 1fr;gap:.2rem 1rem;margin:0}dt{font-weight:600}dd{margin:0;overflow-wrap:anywhere}
.scroll{overflow-x:auto}table{border-collapse:collapse;width:100%;font-size:.9rem}caption{text-align:left;padding:.3rem 0}th,td{border:1px solid var(--rule);padding:.3rem .5rem;text-align:left;vertical-align:top}th{background:var(--soft)}
.caution{border:2px solid var(--bad);padding:.6rem .8rem .6rem 2rem;margin:0}svg{width:100%;height:auto;max-width:42rem}
.page-end{border:0;border-top:2px solid var(--rule);margin:2rem 0}
.grid{stroke:var(--rule);stroke-width:.6}.line{fill:none;stroke-width:2.2}.line.before,.mark.before{stroke:var(--bad)}.line.after,.mark.after{stroke:var(--good)}.line.clean{stroke:var(--clean);stroke-dasharray:6 5}
.mark{fill:var(--paper);stroke-width:2.2}text{fill:var(--ink);font:13px system-ui,sans-serif}@page{margin:11mm}@media print{body{font-size:8.8pt;line-height:1.25;background:#fff}main{max-width:none;padding:0}h1{font-size:1.35rem;margin:0 0 .3em}h2{margin:.7em 0 .2em;font-size:.95rem;break-after:avoid}p,ul,figure{margin:.25em 0}ul{padding-left:1.4em}
.verdicts{gap:.2rem;margin:.3em 0 .5em;padding:0;grid-template-columns:repeat(auto-fit,minmax(14rem,1fr))}.verdicts li{padding:.2rem .5rem}dl{grid-template-columns:auto minmax(5.5rem,1fr) auto minmax(5.5rem,1fr);gap:.05rem .7rem}dd{overflow-wrap:normal}th,td{padding:.08rem .35rem}table{font-size:.9em}svg{max-width:24rem}.page-end{break-after:page;border:0;margin:0}tr,li,svg{break-inside:avoid}.scroll{overflow:visible}}
@media (max-width:30rem){dl{grid-template-columns:1fr}dd{margin-bottom:.4rem}}
`.trim();

function table(caption: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = (tag: string, list: readonly string[], extra = '') =>
    list.map((cell) => `<${tag}${extra}>${escapeHtml(cell)}</${tag}>`).join('');
  const body = rows.map((row) => `<tr>${cells('td', row)}</tr>`).join('');
  return (
    `<div class="scroll" tabindex="0" role="region" aria-label="${escapeHtml(caption)}"><table><caption>${escapeHtml(caption)}</caption>` +
    `<thead><tr>${cells('th', head, ' scope="col"')}</tr></thead><tbody>${body}</tbody></table></div>`
  );
}

function render(block: Block): string {
  switch (block.type) {
    case 'heading':
      return `<h2>${escapeHtml(block.text)}</h2>`;
    case 'paragraph':
      return `<p>${escapeHtml(block.text)}</p>`;
    case 'facts':
      return `<dl>${block.rows.map(([name, value]) => `<dt>${escapeHtml(name)}</dt><dd>${escapeHtml(value)}</dd>`).join('')}</dl>`;
    case 'verdicts': {
      const line = (entry: (typeof block.lines)[number]) =>
        `<li class="${entry.tone}"><i>${toneWords[entry.tone]}</i><b>${escapeHtml(entry.question)}</b>${escapeHtml(entry.answer)}</li>`;
      return `<ul class="verdicts">${block.lines.map(line).join('')}</ul>`;
    }
    case 'table':
      return table(block.caption, block.head, block.rows);
    case 'list':
      return `<ul${block.tone === 'caution' ? ' class="caution"' : ''}>${block.items.map((item) => `<li>${escapeHtml(item)}</li>`).join('')}</ul>`;
    case 'page-end':
      return '<hr class="page-end">';
    case 'plot':
      return `<figure>${plotSvg(block)}<figcaption>${escapeHtml(block.description)}</figcaption></figure>`;
  }
}

// The sheet travels as a file: whatever it is opened with, nothing in it may run or ask another host.
const policy = "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'";

/** The sheet as one HTML file that needs nothing else: no script, no font, no picture from elsewhere. */
export function sheetAsHtml(sheet: Sheet): string {
  return (
    `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}"><meta name="viewport" content="width=device-width,initial-scale=1">` +
    `<title>${escapeHtml(sheet.title)}</title><style>${style}</style></head>\n<body><main><h1>${escapeHtml(sheet.title)}</h1>\n` +
    `${sheet.blocks.map(render).join('\n')}\n</main></body></html>\n`
  );
}
