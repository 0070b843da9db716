import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { faintTexts, violationsEverywhere } from './support/axe.js';
import { pagesOf } from './support/pages.js';
import { outputText, settled, useSite } from './support/site.js';

const site = useSite();
async function sidewaysScroll(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

const pages = [
  '/',
  '/calculators',
  '/job-sheet',
  '/calculators/filter-condition',
  '/calculators/regeneration-permission',
  '/examples/regeneration-axial',
  '/validation',
  '/validation/flow',
  '/guide/regeneration',
  '/guide/offline',
  '/api',
  '/search?q=soot',
];

describe('in light and dark, at 320 px and 1280 px', () => {
  it('a filled-in example with its verdict has no violation', async () => {
    const page = await site.openExample('/calculators/regeneration-permission');
    expect(await violationsEverywhere(page)).toEqual([]);
  });

  it.each(pages)('%s has no violation that axe can find', async (path) => {
    const page = await site.open(path);
    expect(await violationsEverywhere(page)).toEqual([]);
  });

  it('a result with ±, warnings and assumed values has no violation either', async () => {
    const page = await site.open('/calculators/clean-pressure-drop');
    for (const [key, text] of [
      ['cellDensity', '200 cpsi'],
      ['wallThickness', '12 mil'],
      ['filterDiameter', '144 mm'],
      ['filterLength', '152 mm'],
      ['exhaustVolumeFlow', '180 ± 9 m³/h'],
      ['gasTemperature', '900 °C'],
    ] as const) {
      await page.locator(`#input-${key}`).fill(text);
    }
    await settled(page);
    await page.locator('#result-panel summary').click();
    expect(await violationsEverywhere(page)).toEqual([]);
  });

  it('a refused input has no violation either', async () => {
    const page = await site.openExample('/calculators/filter-condition');
    await page.locator('form input[inputmode]').first().fill('about 5');
    await settled(page);
    expect(await violationsEverywhere(page)).toEqual([]);
  });
});

describe('the list that the search drops down', () => {
  it.each(['light', 'dark'] as const)('is readable in %s', async (colorScheme) => {
    const page = await site.open('/guide', { colorScheme });
    await page.getByRole('textbox', { name: 'Search' }).fill('viscosity');
    await page.getByRole('option').first().waitFor();
    expect(await faintTexts(page)).toEqual([]);
    await page.keyboard.press('ArrowDown');
    expect(await faintTexts(page)).toEqual([]);
  });
});

describe('at 320 px', () => {
  it.each(['calculators', 'examples', 'guide', 'validation'])('no page of /%s scrolls sideways', async (folder) => {
    const page = await site.open('/', { viewport: { width: 320, height: 700 }, javaScriptEnabled: false });
    const wide: string[] = [];
    for (const path of [...pagesOf(folder), `/${folder}`]) {
      await page.goto(new URL(path, site.url).href);
      const extra = await sidewaysScroll(page);
      if (extra > 0) wide.push(`${path}: ${extra} px`);
    }
    expect(wide).toEqual([]);
  });

  it('targets are large enough for a thumb', async () => {
    const page = await site.openExample('/calculators/filter-condition', { viewport: { width: 320, height: 700 }, hasTouch: true });
    const small = await page
      .locator(
        'main button:visible, main select:visible, main input[type=text]:visible, main summary:visible, .crumbs a:visible, .foot-links a:visible',
      )
      .evaluateAll((elements) =>
        elements
          .map((element) => ({ height: element.getBoundingClientRect().height, html: element.outerHTML.slice(0, 100) }))
          .filter(({ height }) => height < 44),
      );
    expect(small).toEqual([]);
  });
});

describe('what has the focus', () => {
  /** Stops of the Tab key within the form that the bar with the result covers, or that lie outside the window. */
  async function coveredStops(page: Page): Promise<string[]> {
    await page.locator('form button').first().focus();
    const covered: string[] = [];
    for (let presses = 0; presses < 80; presses += 1) {
      await page.keyboard.press('Tab');
      const stop = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const bar = [...document.querySelectorAll<HTMLElement>('form button')].find((one) => getComputedStyle(one).position === 'sticky');
        if (bar === undefined || element.closest('form') === null || element === bar)
          return { done: element === bar, name: '', clear: true };
        const { top, bottom } = element.getBoundingClientRect();
        const under = document.querySelector('.navbar')?.getBoundingClientRect().bottom ?? 0;
        return {
          done: false,
          name: element.id || element.outerHTML.slice(0, 80),
          clear: top >= under && bottom <= bar.getBoundingClientRect().top,
        };
      });
      if (!stop.clear) covered.push(stop.name);
      if (stop.done) return covered;
    }
    throw new Error('the bar was not reached');
  }

  it.each([
    ['a phone', { width: 390, height: 844 }],
    ['a screen at 200 %', { width: 640, height: 400 }],
  ])('stands clear of the bar with the result on %s', async (_, viewport) => {
    const page = await site.openExample('/calculators/soot-mass-from-pressure-drop', { viewport });
    expect(await coveredStops(page)).toEqual([]);
  });

  it('shows its error above the bar as soon as there is one', async () => {
    const page = await site.openExample('/calculators/soot-mass-from-pressure-drop', { viewport: { width: 390, height: 500 } });
    for (const key of ['wallThickness', 'filterLength', 'exhaustVolumeFlow']) {
      const field = page.locator(`#input-${key}`);
      await field.focus();
      await page.keyboard.press('Control+A');
      await page.keyboard.type('about 5');
      const error = page.locator(`#input-${key}-error`);
      await error.waitFor();
      const bar = page.locator('form button', { hasText: /[↓↑]$/ });
      await expect
        .poll(
          async () => {
            const [said, over] = [await error.boundingBox(), await bar.boundingBox()];
            return (said?.y ?? 0) + (said?.height ?? 0) <= (over?.y ?? 0);
          },
          { message: key },
        )
        .toBe(true);
    }
  });
});

describe('the head of every page', () => {
  it('stands in one row, with nothing cut or hanging below it, from 320 to 1920 px', async () => {
    const page = await site.open('/guide');
    const wrong: string[] = [];
    for (const width of [320, 390, 768, 996, 997, 1000, 1024, 1050, 1100, 1150, 1200, 1280, 1366, 1600, 1920]) {
      await page.setViewportSize({ width, height: 700 });
      const found = await page.evaluate(() => {
        const bar = document.querySelector('.navbar')?.getBoundingClientRect();
        if (bar === undefined) return ['no bar'];
        const parts = [
          ...document.querySelectorAll<HTMLElement>(
            '.navbar__inner :is(.navbar__brand, .navbar__title, .navbar__link, .navbar__toggle, .navbar__search-input)',
          ),
        ];
        return parts.flatMap((part) => {
          const box = part.getBoundingClientRect();
          if (box.width === 0) return [];
          const out = box.bottom > bar.bottom || box.top < bar.top || box.right > window.innerWidth || box.left < 0;
          const lines = part.matches('.navbar__link') && box.height > 60;
          const cut = part.matches('.navbar__title') && part.scrollWidth > part.clientWidth;
          return out || lines || cut ? [part.textContent || part.className] : [];
        });
      });
      wrong.push(...found.map((name) => `${width} px: ${name}`));
    }
    expect(wrong).toEqual([]);
  });
});

describe('a formula', () => {
  it('is no stop for the keyboard unless it scrolls sideways', async () => {
    const page = await site.openExample('/calculators/clean-pressure-drop');
    await page.locator('#working').click();
    const frames = page.getByRole('group', { name: /: (formula|numbers in SI units)$/ });
    await frames.locator('.katex').first().waitFor();
    const scrolling = await frames.evaluateAll((all) =>
      all
        .filter((frame) => frame.scrollHeight > frame.clientHeight && !['hidden', 'clip'].includes(getComputedStyle(frame).overflowY))
        .map((frame) => frame.getAttribute('aria-label')),
    );
    expect(scrolling).toEqual([]);
  });

  it('belongs to a step whose number is text', async () => {
    const page = await site.open('/examples/clean-pressure-drop', { javaScriptEnabled: false });
    // A working inside a step counts from one again.
    const workings = await page
      .locator('main ol')
      .evaluateAll((lists) => lists.map((list) => [...list.querySelectorAll(':scope > li > h3')].map((head) => head.textContent ?? '')));
    expect(workings.filter((heads) => heads.length > 0).length).toBeGreaterThan(1);
    for (const heads of workings) expect(heads.map((text) => /^\d+/.exec(text)?.[0])).toEqual(heads.map((_, index) => String(index + 1)));
  });
});

describe('the menu of a phone', () => {
  it('keeps the focus while it is open, and closes with Escape', async () => {
    const page = await site.open('/calculators/gas-density', { viewport: { width: 390, height: 844 } });
    const toggle = page.getByRole('button', { name: 'Toggle navigation bar' });
    await toggle.click();
    await page.getByRole('button', { name: 'Close navigation bar' }).waitFor();
    for (let presses = 0; presses < 15; presses += 1) {
      await page.keyboard.press(presses < 10 ? 'Tab' : 'Shift+Tab');
      expect(await page.evaluate(() => document.activeElement?.closest('.navbar-sidebar') !== null)).toBe(true);
    }
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.navbar-sidebar--show').count()).toBe(0);
    expect(await toggle.evaluate((button) => button === document.activeElement)).toBe(true);
  });
});

describe('a table wider than the phone', () => {
  it('shows that it goes on, and keeps the name of each row in sight', async () => {
    const page = await site.open('/validation/measured', { viewport: { width: 390, height: 844 } });
    const points = page.getByRole('group', { name: /^Points of Heavy-duty cordierite EX-47/ }).first();
    const frame = points.locator('xpath=..');
    expect(await frame.getAttribute('data-more-right')).not.toBeNull();
    expect(await frame.evaluate((element) => getComputedStyle(element, '::after').opacity)).toBe('1');
    await frame.getByText('More to the right').waitFor();
    const head = points.locator('tbody th').first();
    const before = (await head.boundingBox())?.x;
    await points.evaluate((element) => element.scrollTo({ left: element.scrollWidth }));
    await expect.poll(() => frame.getAttribute('data-more-right')).toBeNull();
    expect((await head.boundingBox())?.x).toBeCloseTo(before ?? Number.NaN, 0);
  });
});

describe('by keyboard alone', () => {
  it('a calculation can be made and its link copied', async () => {
    const page = await site.open('/calculators/gas-density', { permissions: ['clipboard-read', 'clipboard-write'] });
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Skip to main content');
    await page.keyboard.press('Enter');
    for (const [id, text] of [
      ['input-gasPressure', '101.3 kPa'],
      ['input-gasTemperature', ''],
    ] as const) {
      for (let presses = 0; presses < 20; presses += 1) {
        await page.keyboard.press('Tab');
        if ((await page.evaluate(() => document.activeElement?.id)) === id) break;
      }
      await page.keyboard.type(text);
    }
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('input-gasTemperature');
    await page.keyboard.press('Control+A');
    await page.keyboard.type('32');
    await page.keyboard.press('Tab');
    await page.keyboard.type('°F');
    await settled(page);
    expect(await page.getByLabel('Unit of Gas temperature').inputValue()).toBe('degF');
    // pM/(RT) by hand at 273.15 K.
    expect(await outputText(page, 'density')).toBe('1.29 kg/m³');
    for (let presses = 0; presses < 20; presses += 1) {
      await page.keyboard.press('Tab');
      if ((await page.evaluate(() => document.activeElement?.textContent)) === 'Copy link') break;
    }
    await page.keyboard.press('Enter');
    await page.getByText('Link copied').waitFor();
  });

  it('shows where the focus is', async () => {
    const page = await site.open('/calculators/gas-density');
    await page.locator('#input-gasPressure').focus();
    await page.keyboard.press('Tab');
    const outline = await page.evaluate(() => {
      const style = getComputedStyle(document.activeElement as Element);
      return { width: Number.parseFloat(style.outlineWidth), style: style.outlineStyle };
    });
    expect(outline.style).toBe('solid');
    expect(outline.width).toBeGreaterThanOrEqual(2);
  });
});
