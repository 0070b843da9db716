import { dirname, relative } from 'node:path';
import type { Config } from '@docusaurus/types';
import { themes as prismThemes } from 'prism-react-renderer';
import rehypeKatex from 'rehype-katex';
import remarkMath from 'remark-math';
import { formulaStatics } from './plugins/formula-styles/index.js';
import { referenceFirst } from './reference-first.js';

// Seen from the plugin that takes it in: as the whole configuration it ends up in the site, where no path of this machine belongs.
const serviceWorker = relative(dirname(require.resolve('@docusaurus/plugin-pwa')), require.resolve('./src/offline/service-worker.cjs'));

const config: Config = {
  title: 'Wallflow',
  tagline: 'Diesel exhaust aftertreatment, calculated with units',
  favicon: 'img/mark.svg',
  url: 'https://wallflow.example',
  baseUrl: '/',
  staticDirectories: ['static', formulaStatics],
  future: { v4: true, faster: true },
  onBrokenLinks: 'throw',
  onBrokenAnchors: 'throw',
  onDuplicateRoutes: 'throw',
  markdown: { format: 'detect', hooks: { onBrokenMarkdownLinks: 'throw', onBrokenMarkdownImages: 'throw' } },
  i18n: { defaultLocale: 'en', locales: ['en'], localeConfigs: { en: { htmlLang: 'en-GB' } } },
  clientModules: ['./src/offline/register.ts', './src/print/open-details.ts', './src/menu/keyboard.ts'],

  presets: [
    [
      'classic',
      {
        docs: {
          path: 'docs',
          routeBasePath: '/',
          sidebarPath: './sidebars.ts',
          remarkPlugins: [remarkMath],
          rehypePlugins: [[rehypeKatex, { strict: 'error', throwOnError: true }]],
          breadcrumbs: false,
          sidebarItemsGenerator: referenceFirst,
        },
        blog: false,
        theme: { customCss: ['./src/css/site.css', './src/css/print.css'] },
      },
    ],
  ],

  plugins: [
    './plugins/calculations/index.ts',
    './plugins/validation/index.ts',
    './plugins/formula-styles/index.ts',
    // Before the service worker, which lists the pages with their hashes.
    './plugins/content-policy/index.ts',
    [
      '@docusaurus/plugin-pwa',
      {
        // What is kept, and when, is decided in src/offline: nothing is fetched ahead unless the visitor asks for it.
        offlineModeActivationStrategies: ['queryString'],
        swRegister: false,
        swCustom: serviceWorker,
        pwaHead: [
          { tagName: 'link', rel: 'manifest', href: '/manifest.json' },
          { tagName: 'meta', name: 'theme-color', content: '#0c4a50' },
          { tagName: 'link', rel: 'apple-touch-icon', href: '/img/mark-192.png' },
        ],
        injectManifestConfig: {
          // The reference for developers is not carried along.
          globIgnores: ['api/**', 'api.html', 'search-index-api.json', '404.html'],
          maximumFileSizeToCacheInBytes: 8_000_000,
        },
      },
    ],
  ],

  themes: [
    [
      '@easyops-cn/docusaurus-search-local',
      {
        hashed: true,
        indexBlog: false,
        indexPages: true,
        // What is not below these counts as a page, as the calculators do; with '/' they would be left out.
        docsRouteBasePath: ['guide', 'api'],
        // Who looks for a calculator is not shown functions; on the pages of the reference the search finds those alone.
        searchContextByPaths: [{ label: 'Reference for developers', path: 'api' }],
        // A formula as text is noise, such as m3m_3m3.
        ignoreCssSelectors: ['.katex'],
        // Each of these repeats a calculator that is found already.
        ignoreFiles: [/^examples\/./, /^validation\/./],
        highlightSearchTermsOnTargetPage: false,
        searchBarShortcutHint: false,
      },
    ],
  ],

  themeConfig: {
    // The default themes write comments too faintly.
    prism: { theme: prismThemes.vsLight, darkTheme: prismThemes.vsDark },
    colorMode: { respectPrefersColorScheme: true },
    navbar: {
      title: 'Wallflow',
      logo: { src: 'img/mark.svg', alt: '', width: 28, height: 28 },
      items: [
        { to: '/calculators', label: 'Calculators' },
        { to: '/job-sheet', label: 'Job sheet' },
        { to: '/examples', label: 'Worked examples' },
        { to: '/guide', label: 'Guide' },
        { to: '/validation', label: 'Validation' },
        { to: '/api', label: 'Reference' },
      ],
    },
    footer: {
      links: [
        { label: 'The job in order', to: '/guide/the-job' },
        { label: 'Typing quantities', to: '/guide/quantities' },
        { label: 'Citing and printing', to: '/guide/citing' },
        { label: 'In your own program', to: '/guide/embedding' },
        { label: 'Without signal', to: '/guide/offline' },
      ],
      copyright:
        'Wallflow calculates; it does not replace the vehicle maker’s procedure, local codes or licensed practice. Emission control stays fitted and working.',
    },
  },
};

export default config;
